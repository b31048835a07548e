import { type Ruling, refuse, type TaskClaim } from './ruling';

/** The second signature: on finished work that asks for one, by someone who had no hand in it. */
export function ruleOnSignTask({ task, rules, doer }: TaskClaim, onPaper: boolean): Ruling {
  const asked = task.needsSignature || rules.needsSignature;
  if (task.state !== 'done' || !asked) return refuse({ code: 'notAwaitingSignature' });
  if (task.signedBy !== null) return refuse({ code: 'alreadySigned', personId: task.signedBy });
  const hadAHand = task.doneBy === doer.personId || task.alsoDoneBy.includes(doer.personId);
  if (hadAHand) return refuse({ code: 'needsAnotherPerson' });
  const ink = onPaper ? ({ onPaper } as const) : {};
  return { entries: [{ body: { kind: 'signed', task: task.ref, ...ink } }] };
}
