import * as z from './zod';

/** A short text a person types: trimmed, not empty, not endless. `what` begins the sentence of the error. */
export function shortText(what: string, most: number) {
  return z
    .string({ error: `${what} is missing.` })
    .trim()
    .min(1, `${what} is empty. Type it in.`)
    .max(most, `${what} is longer than ${most} characters. Shorten it.`);
}

/** A text that may stay empty. */
export function optionalText(what: string, most: number) {
  return z.string().trim().max(most, `${what} is longer than ${most} characters. Shorten it.`);
}

/** A whole number between two bounds, each told in the error. */
export function wholeNumber(what: string, least: number, most: number) {
  const error = `${what} must be a whole number from ${least} to ${most}.`;
  return z.int(error).min(least, error).max(most, error);
}
