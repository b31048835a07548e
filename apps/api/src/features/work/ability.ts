import type { ActionKind } from '@halfshaft/worklog';

/**
 * A second signature is worth something only when the signer gives it: nobody may enter one for another person.
 * Everything else may be recorded for a named person by whoever holds the phone.
 */
export function mayRecordFor(kind: ActionKind, by: string, enteredBy: string): boolean {
  return kind !== 'signTask' || by === enteredBy;
}
