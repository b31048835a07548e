import type { Refusal } from './model';

/** A typed "the data cannot carry this", with the sentence to show. */
export function refuse<Reason extends string>(reason: Reason, says: string): Refusal<Reason> {
  return { ok: false, reason, says };
}
