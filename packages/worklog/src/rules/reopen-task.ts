import { reopenDependents } from './reopen-dependents';
import { type Ruling, refuse, type TaskClaim } from './ruling';

/**
 * Opening again, with a reason: by anyone. Whoever finds work wrong must be able to say so at once, also when the
 * person who did it and the manager are away; the log names who did.
 */
export function ruleOnReopenTask({ state, task, rules }: TaskClaim, reason: string): Ruling {
  const closed = task.state === 'done' || task.state === 'carriedOver' || task.state === 'notNeeded';
  if (!closed) return refuse({ code: 'notClosed', state: task.state });
  if (reason.trim() === '') return refuse({ code: 'reasonMissing' });
  const dependents = task.state === 'done' ? reopenDependents(state, task.id, rules, reason) : [];
  const body = { kind: 'reopened', task: task.ref, reason, because: null } as const;
  return { entries: [{ body }, ...dependents] };
}
