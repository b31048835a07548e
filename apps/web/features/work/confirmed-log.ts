import { applyAll, emptyState, type LogEntry, type WorkState } from '@halfshaft/worklog';

/** The log as far as it has been pulled, with the state it gives. */
export interface ConfirmedLog {
  entries: readonly LogEntry[];
  state: WorkState;
  lastSeq: number;
}

export const emptyLog: ConfirmedLog = { entries: [], state: emptyState, lastSeq: 0 };

/** The log with one more page. What was known already is passed over, so a page may come twice. */
export function addPage(log: ConfirmedLog, page: readonly LogEntry[]): ConfirmedLog {
  const fresh = page.filter((entry) => entry.seq > log.lastSeq).sort((one, other) => one.seq - other.seq);
  const last = fresh.at(-1);
  if (last === undefined) return log;
  return {
    entries: [...log.entries, ...fresh],
    state: applyAll(log.state, fresh),
    lastSeq: last.seq,
  };
}
