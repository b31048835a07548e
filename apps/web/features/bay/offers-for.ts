import type { PersonId, Task } from '@halfshaft/worklog';

/** What can be done with a task by a tap. */
export type TaskOffer = 'take' | 'done' | 'problem' | 'leave' | 'release' | 'sign' | 'signHere' | 'reopen';

export interface OfferQuestion {
  /** Whom it is recorded for. */
  by: PersonId;
  /** Whose session it is: anybody else signs by initials. */
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
      if (!awaitsSignature(task)) return ['reopen'];
      return hadAHand(task, me) ? ['signHere', 'reopen'] : ['sign', 'signHere', 'reopen'];
    case 'carriedOver':
    case 'notNeeded':
      return ['reopen'];
  }
}

function awaitsSignature({ needsSignature, signedBy }: Task): boolean {
  return needsSignature && signedBy === null;
}

/** Whoever did the work, alone or with others, cannot sign it. */
export function hadAHand({ doneBy, alsoDoneBy }: Task, person: PersonId): boolean {
  return doneBy === person || alsoDoneBy.includes(person);
}
