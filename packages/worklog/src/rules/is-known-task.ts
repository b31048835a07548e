import type { TaskRef, TaskRules } from '../model';
import type { WorkState } from '../state';

/** False when there is no card or snag behind the task, or the snag was taken back. */
export function isKnownTask(state: WorkState, ref: TaskRef, rules: TaskRules | null): boolean {
  if (!rules) return false;
  if (ref.source.kind === 'card') return true;
  const snag = state.snags.get(ref.source.snagId);
  return snag !== undefined && !snag.withdrawn;
}
