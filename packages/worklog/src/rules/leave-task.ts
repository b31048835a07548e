import { type Ruling, refuse, type TaskClaim } from './ruling';
import { refusalOfClosed } from './take-task';

/** Carrying over and dropping: with a reason, and what another holds only by someone who may manage. */
export function ruleOnLeaveTask(
  { task, rules, doer }: TaskClaim,
  kind: 'carryOverTask' | 'dropTask',
  reason: string,
): Ruling {
  const closed = refusalOfClosed(task);
  if (closed) return refuse(closed);
  if (task.holder !== null && task.holder !== doer.personId && !doer.mayManage) {
    return refuse({ code: 'heldByAnother', personId: task.holder });
  }
  if (reason.trim() === '') return refuse({ code: 'reasonMissing' });
  const said = { task: task.ref, needsSignature: rules.needsSignature, reason };
  return { entries: [{ body: { kind: kind === 'dropTask' ? 'dropped' : 'carriedOver', ...said } }] };
}
