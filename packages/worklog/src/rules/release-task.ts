import { type Ruling, refuse, type TaskClaim } from './ruling';

/** Letting go: by the holder, or by someone who may manage. */
export function ruleOnReleaseTask({ task, doer }: TaskClaim): Ruling {
  if (task.holder === null) return refuse({ code: 'notHeld' });
  if (task.holder !== doer.personId && !doer.mayManage) {
    return refuse({ code: 'heldByAnother', personId: task.holder });
  }
  return { entries: [{ body: { kind: 'released', task: task.ref, heldBy: task.holder } }] };
}
