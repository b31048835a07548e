import type { JobCard } from '../job-card';

/**
 * Of these cards, those that fit a new part, in the order given.
 *
 * @example
 * cardIdsThatFit(fullStarterCards('front', 'gravel'))[0] // 'starter:front-pads'
 */
export function cardIdsThatFit(cards: readonly Pick<JobCard, 'id' | 'fitsNewPart'>[]): string[] {
  return cards.filter(({ fitsNewPart }) => fitsNewPart).map(({ id }) => id);
}
