import { type EventReplica, REPLICA_VERSION } from '@halfshaft/contract';
import type { LogEntry } from '@halfshaft/worklog';
import { openPhoneDatabase } from '@/lib/phone-database';
import type { EventShelf } from './event-shelf';

type Database = NonNullable<Awaited<ReturnType<typeof openPhoneDatabase>>>;

/** The shelf in the browser's own database, shared by all tabs. `name` stands for team and event. */
export function browserShelf(name: string): EventShelf {
  return {
    async read() {
      const database = await openPhoneDatabase();
      if (!database) return null;
      try {
        return await readFrom(database, name);
      } catch {
        return null;
      }
    },
    keepReplica(replica, receivedAt) {
      quietly((database) =>
        database.put('replicas', { version: REPLICA_VERSION, receivedAt, replica }, name),
      );
    },
    keepEntries(entries) {
      if (entries.length > 0) quietly((database) => putEntries(database, name, entries));
    },
    dropEntries() {
      quietly((database) => database.delete('entries', allOf(name)));
    },
  };
}

async function readFrom(database: Database, name: string) {
  const kept = await database.get('replicas', name);
  // A copy of another shape could not be drawn; the server sends a new one.
  if (kept?.version !== REPLICA_VERSION) return null;
  const entries = (await database.getAll('entries', allOf(name))) as LogEntry[];
  return { replica: kept.replica as EventReplica, receivedAt: kept.receivedAt, entries: untilGap(entries) };
}

/** Two tabs write independently: after a hole nothing counts, since the rest is pulled from there on. */
function untilGap(entries: LogEntry[]): LogEntry[] {
  const hole = entries.findIndex((entry, index) => entry.seq !== index + 1);
  return hole < 0 ? entries : entries.slice(0, hole);
}

async function putEntries(database: Database, name: string, entries: readonly LogEntry[]): Promise<void> {
  const change = database.transaction('entries', 'readwrite');
  for (const entry of entries) void change.store.put(entry, [name, entry.seq]);
  await change.done;
}

function allOf(name: string): IDBKeyRange {
  return IDBKeyRange.bound([name, 0], [name, Number.MAX_SAFE_INTEGER]);
}

/** A full disk or a closed database costs the copy, not the screen. */
function quietly(change: (database: Database) => Promise<unknown>): void {
  void openPhoneDatabase()
    .then((database) => database && change(database))
    .catch(() => undefined);
}
