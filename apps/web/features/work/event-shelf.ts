import type { EventReplica } from '@halfshaft/contract';
import type { LogEntry } from '@halfshaft/worklog';

/** One event as this device keeps it between visits. */
export interface ShelvedEvent {
  replica: EventReplica;
  /** This device's clock when the replica came. */
  receivedAt: number;
  /** The log as far as it had been pulled, by seq. */
  entries: LogEntry[];
}

/** Keeps one event on the device. Each call may fail silently: the shelf is a copy, never the only place. */
export interface EventShelf {
  /** Null when nothing usable is there. */
  read(): Promise<ShelvedEvent | null>;
  keepReplica(replica: EventReplica, receivedAt: number): void;
  keepEntries(entries: readonly LogEntry[]): void;
  /** The log was put back from a copy: what was pulled is no longer the truth. */
  dropEntries(): void;
}

/** For browsers that keep nothing. */
export const noShelf: EventShelf = {
  read: async () => null,
  keepReplica: () => undefined,
  keepEntries: () => undefined,
  dropEntries: () => undefined,
};
