import type { Task, TaskRef, TaskRules } from './model';
import type { WorkState } from './state';
import { taskIdOf } from './task-id-of';

/**
 * The task as it stands: the stored one, or the open one that a card or snag at a service implies before anyone has
 * touched it. Nobody has to create tasks, so two phones cannot create the same one twice.
 *
 * @example
 * taskOf(emptyState, ref, null).state // 'open'
 */
export function taskOf(
  state: WorkState,
  ref: TaskRef,
  rules: Pick<TaskRules, 'needsSignature'> | null,
): Task {
  const id = taskIdOf(ref);
  const stored = state.tasks.get(id);
  if (stored) return stored;
  return {
    id,
    ref,
    state: 'open',
    holder: null,
    doneBy: null,
    alsoDoneBy: [],
    signedBy: null,
    needsSignature: rules?.needsSignature ?? false,
    reason: null,
    findings: [],
    readings: [],
    round: 1,
    changedSeq: 0,
    changedBy: null,
  };
}
