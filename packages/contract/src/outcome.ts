import * as z from './zod';

/**
 * Every way a request can end other than well. The sentence that goes with a code is made where the error is raised.
 * - signInNeeded: no session, or it expired. Sign in; what was typed is kept.
 * - unknown: no such thing, or not yours: one answer for both. Go back and choose again.
 * - notAllowed: yours, but not with your role. Ask a manager.
 * - badInput: the fields listed are wrong. Mend them and send again.
 * - conflict: someone changed or took it first. Look again and repeat.
 * - tooMuch: too large or too often. Send less, or wait.
 * - unexpected: our mistake. Nothing was changed.
 */
export const errorCode = z.enum([
  'signInNeeded',
  'unknown',
  'notAllowed',
  'badInput',
  'conflict',
  'tooMuch',
  'unexpected',
]);
export type ErrorCode = z.infer<typeof errorCode>;

/** What is wrong with one field of the input. */
export interface FieldProblem {
  /** Such as `card.intervals.0.every`. */
  path: string;
  message: string;
}

/** What a client finds in `error.data.problem`. */
export interface Problem {
  code: ErrorCode;
  message: string;
  fields: FieldProblem[];
}
