import type { Action, PersonId } from './model';

/**
 * Whether one person may enter an action for another. A second signature is worth something only when the signer gives
 * it: by the signer's own account, by the signer's initials on another's device, or in ink on the printed sheet, which
 * anyone may type in. Initials prove little, since all of the team can read them, so the log says that it was initials
 * or ink, and under whose account it was entered. Everything else may be recorded for a named person by whoever holds the phone.
 *
 * @example
 * mayRecordFor({ kind: 'signTask', by: 'kai', args: { task, onPaper: true } }, 'jo') // true
 */
export function mayRecordFor(action: Action, enteredBy: PersonId): boolean {
  if (action.kind !== 'signTask' || action.by === enteredBy) return true;
  return action.args.onPaper === true || action.args.byInitials === true;
}
