import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** What this browser keeps: copies of answers, so that pages open without a network, and what waits to be sent. */
export interface PhoneSchema extends DBSchema {
  /** Copies of events, by team and event. */
  replicas: { key: string; value: { version: number; receivedAt: number; replica: unknown } };
  /** Entries of the log, by team and event, then by seq. */
  entries: { key: [string, number]; value: unknown };
  /** The last answers of single questions, as one bundle. */
  answers: { key: string; value: unknown };
  /** Actions the server has not answered, by id: until then they are nowhere else. */
  outbox: { key: string; value: { place: string }; indexes: { byPlace: string } };
  /** What people must still be told, by id. */
  notices: { key: string; value: { place: string }; indexes: { byPlace: string } };
  /** Pictures the server does not have yet, by the id of their photo. */
  photos: {
    key: string;
    value: { place: string; ownerName: string };
    indexes: { byWhose: [place: string, ownerName: string] };
  };
  /** Pictures of what is still being written down, by the key of its draft. */
  draftPhotos: { key: string; value: Uint8Array<ArrayBuffer>[] };
  /** Small things by name: the device's id and number, whose turn it is to send, how far people were told. */
  marks: { key: string; value: unknown };
}

export type PhoneDatabase = IDBPDatabase<PhoneSchema>;

const NAME = 'halfshaft';
const COPIES = ['replicas', 'entries', 'answers'] as const;
const VERSION = 4;

let opened: Promise<PhoneDatabase | null> | null = null;

/** Null where the browser has no such storage or forbids it: the pages then live from the network alone. */
export async function openPhoneDatabase(): Promise<PhoneDatabase | null> {
  opened ??= tryToOpen();
  const database = await opened;
  // A profile that was busy a moment ago may have room again.
  if (!database) opened = null;
  return database;
}

async function tryToOpen(): Promise<PhoneDatabase | null> {
  try {
    if (typeof indexedDB === 'undefined') return null;
    return await openDB<PhoneSchema>(NAME, VERSION, {
      upgrade(database, before) {
        if (before < 1) for (const store of COPIES) database.createObjectStore(store);
        if (before < 2) {
          database.createObjectStore('outbox').createIndex('byPlace', 'place');
          database.createObjectStore('notices').createIndex('byPlace', 'place');
          database.createObjectStore('marks');
        }
        if (before < 3) database.createObjectStore('photos').createIndex('byWhose', ['place', 'ownerName']);
        if (before < 4) database.createObjectStore('draftPhotos');
      },
      // A newer page in another tab wants to change the stores: let it, this one asks anew when it needs to.
      blocking: (_current, _blocked, event) => {
        (event.target as IDBDatabase).close();
        opened = null;
      },
      terminated() {
        opened = null;
      },
    });
  } catch {
    return null; // private windows, a broken profile, no room
  }
}

/**
 * Makes the requests of one change and waits until all of it is stored. When one of them cannot even be made (what is no
 * data, a closed database) none of them holds: a change left half made would otherwise be stored as it is.
 */
export async function storeTogether(
  change: { done: Promise<void>; abort(): void },
  requests: readonly (() => Promise<unknown>)[],
): Promise<void> {
  const made: Promise<unknown>[] = [change.done];
  try {
    for (const request of requests) made.push(request());
  } catch (error) {
    change.abort();
    await Promise.allSettled(made);
    throw error;
  }
  await Promise.all(made);
}

/** Forgets all copies, since the next person may hold the same phone. What waits to be sent stays: it has an owner. */
export async function wipeCopies(): Promise<void> {
  const database = await openPhoneDatabase();
  if (!database) return;
  const change = database.transaction(COPIES, 'readwrite');
  await storeTogether(
    change,
    COPIES.map((store) => () => change.objectStore(store).clear()),
  );
}
