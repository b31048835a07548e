import type { EntryId, LogEntry, PersonId } from '@halfshaft/worklog';
import { carOfEntry } from './car-of-entry';

export interface LogFilter {
  /** Null: all. */
  car: EntryId | null;
  /** Who did it or typed it; null: all. */
  person: PersonId | null;
}

/** The entries a filter lets through, newest first. */
export function filterLog(entries: readonly LogEntry[], { car, person }: LogFilter): LogEntry[] {
  return entries
    .filter((entry) => car === null || carOfEntry(entry) === car)
    .filter((entry) => person === null || entry.by === person || entry.enteredBy === person)
    .reverse();
}
