import type { EntryBody } from '../entry';
import type { TaskId, TaskRules } from '../model';
import type { WorkState } from '../state';

/**
 * The tasks that must be done again because of this one (wheel off, then nuts), as far as they are done. Order is
 * that of the log, not of device clocks: a clock that is wrong must not leave nuts untightened, so at worst something
 * is asked for once more.
 */
export function reopenDependents(
  state: WorkState,
  because: TaskId,
  rules: TaskRules,
  reason: string,
): { body: EntryBody }[] {
  const ids = [...new Set(rules.reopens)].filter((id) => id !== because);
  return ids.flatMap((id) => {
    const task = state.tasks.get(id);
    if (task?.state !== 'done') return [];
    return [{ body: { kind: 'reopened', task: task.ref, reason, because } }];
  });
}
