import type { LastDone, LifingCard } from './model';

/**
 * A car that was prepared at home: every card was done just before the start, so that the first day's work is behind it
 * and nothing is worn yet.
 *
 * @example
 * judgeService({ ...question, cards, lastDone: preparedAtHome(cards) })
 */
export function preparedAtHome(cards: readonly Pick<LifingCard, 'id'>[]): Map<string, LastDone> {
  return new Map(cards.map(({ id }) => [id, { pointIndex: 0, carried: null }]));
}
