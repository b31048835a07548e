import type { ArgsOf } from '../model';
import { type Ruling, refuse, type TaskClaim } from './ruling';

/** The second signature: on finished work that asks for one, by someone who had no hand in it. */
export function ruleOnSignTask({ task, rules, doer }: TaskClaim, args: ArgsOf<'signTask'>): Ruling {
  const asked = task.needsSignature || rules.needsSignature;
  if (task.state !== 'done' || !asked) return refuse({ code: 'notAwaitingSignature' });
  if (task.signedBy !== null) return refuse({ code: 'alreadySigned', personId: task.signedBy });
  const hadAHand = task.doneBy === doer.personId || task.alsoDoneBy.includes(doer.personId);
  if (hadAHand) return refuse({ code: 'needsAnotherPerson' });
  return { entries: [{ body: { kind: 'signed', task: task.ref, ...howSigned(args) } }] };
}

/** What was signed in ink stays ink, whatever else is said of it: the paper can be looked at. */
function howSigned({ onPaper, byInitials }: ArgsOf<'signTask'>) {
  if (onPaper) return { onPaper: true } as const;
  return byInitials ? ({ byInitials: true } as const) : {};
}
