import { applyAll } from './apply';
import type { LogEntry } from './entry';
import { emptyState, type WorkState } from './state';

/**
 * The state that a whole log gives. Entries may come in any order; they are applied by `seq`.
 *
 * @example
 * rebuild(log).tasks.get(taskId)?.state // 'done'
 */
export function rebuild(entries: Iterable<LogEntry>): WorkState {
  return applyAll(
    emptyState,
    [...entries].sort((earlier, later) => earlier.seq - later.seq),
  );
}
