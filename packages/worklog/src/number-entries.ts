import type { EntryDraft, LogEntry } from './entry';
import type { ClockMillis } from './model';

/**
 * Gives drafts their places in the log: `firstSeq`, `firstSeq` + 1 … A phone numbers on from the last seq it knows,
 * with `serverTime` null, and throws those numbers away when the server has answered.
 *
 * @example
 * numberEntries(outcome.entries, 41, now).map((entry) => entry.seq) // [41, 42]
 */
export function numberEntries(
  drafts: readonly EntryDraft[],
  firstSeq: number,
  serverTime: ClockMillis | null,
): LogEntry[] {
  return drafts.map((draft, index) => ({ ...draft, seq: firstSeq + index, serverTime }));
}
