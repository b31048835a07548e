import { CARD_LIMITS, type JobCard } from '@halfshaft/lifing';
import type { LifeCounter } from '@halfshaft/worklog';

/** Why a card could not be changed, in a sentence; or the card as it shall be saved. */
export type ChangedCard = { ok: true; card: Omit<JobCard, 'id'> } | { ok: false; says: string };

/**
 * A card with another limit on one counter, and a note of it behind its instruction, where whoever does the job and whoever
 * edits the card will read it. Its other limits stay.
 *
 * @param every in the counter's own unit
 */
export function withLimit(
  { id: _, ...card }: JobCard,
  { counter, every, note }: { counter: LifeCounter; every: number; note: string },
): ChangedCard {
  if (!Number.isInteger(every) || every < 1 || every > CARD_LIMITS.amount) {
    return { ok: false, says: 'The limit must be a number above 0. Correct it.' };
  }
  const instruction = [card.instruction, note.trim()].filter((words) => words !== '').join(' ');
  if (instruction.length > CARD_LIMITS.instructionCharacters) {
    return {
      ok: false,
      says: 'The note does not fit on the card any more. Shorten it, or the card’s instruction.',
    };
  }
  const known = card.intervals.some((interval) => interval.counter === counter);
  const intervals = known
    ? card.intervals.map((interval) => (interval.counter === counter ? { ...interval, every } : interval))
    : [...card.intervals, { counter, every, tolerance: 0 }];
  return { ok: true, card: { ...card, intervals, instruction } };
}
