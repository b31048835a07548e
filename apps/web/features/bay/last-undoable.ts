import type { DeviceId, LogEntry, WorkState } from '@halfshaft/worklog';

/** Later than this a slip is put right as a new step. */
const UNDO_MILLIS = 5 * 60_000;

/** The newest entry of this phone whose action can still be taken back, or null. */
export function lastUndoable(
  entries: readonly LogEntry[],
  state: WorkState,
  deviceId: DeviceId,
  nowMillis: number,
): LogEntry | null {
  const mine = entries.filter((entry) => entry.deviceId === deviceId && entry.body.kind !== 'undone');
  const open = mine.filter((entry) => state.actions.get(entry.actionId)?.undone === false);
  const last = open.at(-1);
  if (!last || nowMillis - last.deviceTime > UNDO_MILLIS) return null;
  // An action may have made several entries (started and taken); the first says what was asked for.
  return open.find((entry) => entry.actionId === last.actionId) ?? last;
}
