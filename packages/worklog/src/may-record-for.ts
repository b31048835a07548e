import type { Action, PersonId } from './model';

/**
 * Whether one person may enter an action for another. A second signature is worth something only when the signer gives
 * it: on the device by the signer's own account, or in ink on the printed sheet, which anyone may type in; the log then
 * says that it was ink, and who typed it. Everything else may be recorded for a named person by whoever holds the phone.
 *
 * @example
 * mayRecordFor({ kind: 'signTask', by: 'kai', args: { task, onPaper: true } }, 'jo') // true
 */
export function mayRecordFor(action: Action, enteredBy: PersonId): boolean {
  if (action.kind !== 'signTask' || action.by === enteredBy) return true;
  return action.args.onPaper === true;
}
