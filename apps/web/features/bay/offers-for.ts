import type { PersonId, Task } from '@halfshaft/worklog';

/** What can be done with a task by a tap. */
export type TaskOffer = 'take' | 'done' | 'problem' | 'leave' | 'release' | 'sign' | 'reopen';

export interface OfferQuestion {
  /** Whom it is recorded for. */
  by: PersonId;
  /** Whose session it is: a signature is only for oneself. */
  me: PersonId;
  mayManage: boolean;
}

/**
 * The buttons of a task, in their order. "Done" keeps its place when a task is taken, and what comes under the thumb
 * instead of "I've got it" only opens a sheet: a glove often taps twice.
 */
export function offersFor(task: Task, { by, me, mayManage }: OfferQuestion): TaskOffer[] {
  switch (task.state) {
    case 'open':
      return ['take', 'done', 'problem', 'leave'];
    case 'claimed':
    case 'underWay':
      if (task.holder === by || mayManage) return ['problem', 'done', 'leave', 'release'];
      return ['problem', 'done'];
    case 'done':
      return awaitsSignatureOf(task, me) ? ['sign', 'reopen'] : ['reopen'];
    case 'carriedOver':
    case 'notNeeded':
      return ['reopen'];
  }
}

function awaitsSignatureOf(task: Task, me: PersonId): boolean {
  const hadAHand = task.doneBy === me || task.alsoDoneBy.includes(me);
  return task.needsSignature && task.signedBy === null && !hadAHand;
}
