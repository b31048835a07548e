import { type JobCard, positionsOfCard, wheelOf } from '@halfshaft/lifing';
import { joinIds, splitIds } from '../id-parts';
import type { CardId } from '../model';
import { LIFE_COUNTERS, type LifeCounter } from './way-driven';

/** What can fail and is counted on its own: the part of a job, or what one look of a round looks at. */
export interface WatchedPart {
  cardId: CardId;
  /** Null for a job, and for what was said of a round as a whole. */
  lookId: string | null;
}

/**
 * One id for a part: the card's own where there is no look.
 *
 * @example
 * partIdOf({ cardId: 'corner', lookId: 'hose' }) // 'corner~hose'
 */
export function partIdOf({ cardId, lookId }: WatchedPart): string {
  return joinIds(lookId === null ? [cardId] : [cardId, lookId]);
}

/** The reverse of `partIdOf`. */
export function partOfId(partId: string): WatchedPart {
  const [cardId = '', lookId = null] = splitIds(partId);
  return { cardId, lookId };
}

/** How the lives of a card's parts are asked for: the shape reliability's `PartQuestion` has. */
export interface LifeQuestion {
  cardId: string;
  positions: readonly string[];
  counter: LifeCounter;
  doneRenews: boolean;
  shows: 'atOnce' | 'whenLooked';
}

/**
 * Where a card's parts are, what their life is counted in (its own limit's counter if that is one of driving, else
 * stage metres), and whether doing the card puts new ones on. What only looks can find may stay hidden until somebody
 * looks: taken as felt at once it would make parts look better than they are. A part that is changed by its card is
 * looked at by the rounds around it and not by the card, so it counts as good for as long as nobody says otherwise.
 *
 * @param card the part's own, or the round its look belongs to
 * @example
 * lifeQuestionOf({ ...belt, fitsNewPart: true }, { cardId: 'belt', lookId: null }).doneRenews // true
 */
export function lifeQuestionOf(
  card: Pick<JobCard, 'readings' | 'place' | 'intervals' | 'fitsNewPart'>,
  part: WatchedPart,
): LifeQuestion {
  const wheels = positionsOfCard(card).map((position) => wheelOf(position) ?? position);
  const doneRenews = part.lookId === null && card.fitsNewPart;
  return {
    ...{ cardId: partIdOf(part), doneRenews },
    positions: [...new Set(wheels)],
    counter: counterOf(card),
    shows: doneRenews ? 'atOnce' : 'whenLooked',
  };
}

function counterOf({ intervals }: Pick<JobCard, 'intervals'>): LifeCounter {
  const counters = intervals.map(({ counter }) => counter);
  return LIFE_COUNTERS.find((counter) => counters.includes(counter)) ?? 'stageMetres';
}
