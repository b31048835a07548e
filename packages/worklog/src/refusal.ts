import type { EntryDraft } from './entry';
import type { PersonId, TaskState } from './model';

/** Why an action was not taken, with the ids a sentence needs. See `refusalInWords` for each in words. */
export type Refusal =
  | { code: 'heldByAnother'; personId: PersonId }
  | { code: 'alreadyDone'; personId: PersonId }
  /** Taken or started again by its holder. Refused, not accepted with nothing: every accepted action stands in the log. */
  | { code: 'alreadyYours' }
  | { code: 'notHeld' }
  /** Carried over or not needed: must be opened again first. */
  | { code: 'notOpen'; state: TaskState }
  /** Asked to open again what is not closed. */
  | { code: 'notClosed'; state: TaskState }
  | { code: 'serviceCancelled' }
  | { code: 'notAllowed' }
  | { code: 'revoked' }
  | { code: 'needsAnotherPerson' }
  | { code: 'notAwaitingSignature' }
  | { code: 'alreadySigned'; personId: PersonId }
  | { code: 'nothingToUndo' }
  | { code: 'changedSince'; personId: PersonId }
  | { code: 'unknownTask' }
  | { code: 'unknownSnag' }
  | { code: 'versionTooOld'; version: number }
  | { code: 'versionTooNew'; version: number }
  | { code: 'unknownKind'; kind: string }
  | { code: 'reasonMissing' };

export type RefusalCode = Refusal['code'];

/** What became of an action. `accepted` always carries at least one entry. */
export type Outcome = { status: 'accepted'; entries: EntryDraft[] } | { status: 'refused'; refusal: Refusal };
