import type { TaskId } from './model';
import type { WorkState } from './state';

/** When each task was last closed: a signature later on is no new work. */
export function closingSeqs(state: WorkState): Map<TaskId, number> {
  const seqs = new Map<TaskId, number>();
  for (const { kinds, tasks, undone } of state.actions.values()) {
    const [closed] = tasks;
    if (undone || kinds[0] !== 'done' || !closed) continue;
    seqs.set(closed.before.id, Math.max(closed.seq, seqs.get(closed.before.id) ?? 0));
  }
  return seqs;
}
