import { ACTION_VERSION, type PersonId } from './model';
import type { Refusal } from './refusal';

/**
 * A refusal as a mechanic reads it: what stands against it, and what to do.
 *
 * @example
 * refusalInWords({ code: 'heldByAnother', personId: 'p1' }, () => 'Mia') // 'Mia has it already. Ask Mia, or pick another.'
 */
export function refusalInWords(refusal: Refusal, nameOf: (id: PersonId) => string): string {
  switch (refusal.code) {
    case 'heldByAnother':
      return `${nameOf(refusal.personId)} has it already. Ask ${nameOf(refusal.personId)}, or pick another.`;
    case 'alreadyDone':
      return `${nameOf(refusal.personId)} has done it already. If it is not right, open it again and say why.`;
    case 'alreadyYours':
      return 'You have it already. Carry on.';
    case 'notHeld':
      return 'Nobody has it, so there is nothing to let go. Take it if you want it.';
    case 'notOpen':
      return refusal.state === 'notNeeded'
        ? 'It was marked not needed. To do it after all, open it again and say why.'
        : 'It was carried over to a later service. To do it here after all, open it again and say why.';
    case 'notClosed':
      return 'It is still open, so there is nothing to open again. Take it and do it.';
    case 'serviceCancelled':
      return 'This service was cancelled. Look for the job at the next service.';
    case 'notAllowed':
      return 'Only who did it, who entered it or a manager can take it back. Ask one of them.';
    case 'revoked':
      return 'You are no longer in this team. What you did and found is kept; for anything else ask the manager.';
    case 'needsAnotherPerson':
      return 'You worked on it, so someone else must check and sign. Hand it to another person.';
    case 'notAwaitingSignature':
      return 'No signature is waiting here: either it is not done yet or it needs none. Look at it again.';
    case 'alreadySigned':
      return `${nameOf(refusal.personId)} has signed it already. Nothing more to do.`;
    case 'nothingToUndo':
      return 'There is nothing to take back here. If something is wrong, put it right as a new step.';
    case 'changedSince':
      return `${nameOf(refusal.personId)} has changed it since, so it cannot be taken back. Put it right as a new step.`;
    case 'unknownTask':
      return 'This job is not on the list any more. Pick another, or raise a snag if it needs doing.';
    case 'unknownSnag':
      return 'This snag is not on the list: it may have been taken back. Raise it again if it is still there.';
    case 'versionTooOld':
      return `This phone runs an old version (${refusal.version}; now ${ACTION_VERSION}). Reload the page, then do it again.`;
    case 'versionTooNew':
      return `This phone is newer (${refusal.version}) than the team's server (${ACTION_VERSION}). Ask the manager to update the server, then do it again.`;
    case 'unknownKind':
      return `The server does not know how to do "${refusal.kind}". Reload the page, then do it again.`;
    case 'reasonMissing':
      return 'A reason is missing. Add a few words why, then send it again.';
  }
}
