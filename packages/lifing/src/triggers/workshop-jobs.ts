import { compareTime, type Placed } from './facts';
import type { Fact } from './model';

export interface WorkshopJob {
  /** The card the temporary repair was made on. */
  cardId: string;
  words: string;
  /** Where it was made. */
  pointIndex: number;
}

/**
 * Every temporary repair that has not been made good: a job for the workshop after the event, in the order they were
 * made.
 *
 * @example
 * workshopJobs(facts) // [{ cardId: 'starter:under-rear', words: 'exhaust hanger tied with wire', pointIndex: 9 }]
 */
export function workshopJobs(facts: readonly Fact[]): WorkshopJob[] {
  return facts
    .map((fact, order) => ({ fact, order }))
    .filter(
      (each): each is Placed<Extract<Fact, { kind: 'temporaryRepair' }>> =>
        each.fact.kind === 'temporaryRepair' && each.fact.madeGoodAt === null,
    )
    .sort(compareTime)
    .map(({ fact: { cardId, words, pointIndex } }) => ({ cardId, words, pointIndex }));
}
