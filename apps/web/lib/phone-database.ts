import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** What this browser keeps of answers of the server, so that pages open without a network. Nothing here is the truth. */
export interface PhoneSchema extends DBSchema {
  /** Copies of events, by team and event. */
  replicas: { key: string; value: { version: number; receivedAt: number; replica: unknown } };
  /** Entries of the log, by team and event, then by seq. */
  entries: { key: [string, number]; value: unknown };
  /** The last answers of single questions, as one bundle. */
  answers: { key: string; value: unknown };
}

const NAME = 'halfshaft';
const STORES = ['replicas', 'entries', 'answers'] as const;

let opened: Promise<IDBPDatabase<PhoneSchema> | null> | null = null;

/** Null where the browser has no such storage or forbids it: the pages then live from the network alone. */
export function openPhoneDatabase(): Promise<IDBPDatabase<PhoneSchema> | null> {
  opened ??= tryToOpen();
  return opened;
}

async function tryToOpen(): Promise<IDBPDatabase<PhoneSchema> | null> {
  try {
    if (typeof indexedDB === 'undefined') return null;
    return await openDB<PhoneSchema>(NAME, 1, {
      upgrade(database) {
        for (const store of STORES) database.createObjectStore(store);
      },
      // A newer page in another tab wants to change the stores: let it, this one asks anew when it needs to.
      blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
      terminated() {
        opened = null;
      },
    });
  } catch {
    return null; // private windows, a broken profile, no room
  }
}

/** Forgets all of it. Used when a person signs out of a shared phone. */
export async function wipePhoneDatabase(): Promise<void> {
  const database = await openPhoneDatabase();
  if (!database) return;
  const change = database.transaction(STORES, 'readwrite');
  await Promise.all([...STORES.map((store) => change.objectStore(store).clear()), change.done]);
}
