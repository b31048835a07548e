import type { LifingCard } from './model';
import { requireWholeNumber } from './whole-number';

/**
 * The work in a set of cards, in person-seconds: the clock seconds of each times the people at it.
 *
 * @throws RangeError when an amount is negative or not whole
 * @example
 * neededPersonSeconds([{ seconds: 180, people: 2 }, { seconds: 120, people: 1 }]) // 480
 */
export function neededPersonSeconds(cards: readonly Pick<LifingCard, 'seconds' | 'people'>[]): number {
  return cards.reduce((sum, { seconds, people }) => {
    requireWholeNumber('neededPersonSeconds', 'seconds', seconds);
    requireWholeNumber('neededPersonSeconds', 'people', people);
    return sum + seconds * people;
  }, 0);
}
