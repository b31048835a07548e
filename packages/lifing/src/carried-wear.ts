import { COUNTER_NAMES } from './counters';
import type { Counters, LastDone, LifingCard } from './model';
import type { RouteKnowledge } from './questions';
import { wearBetween } from './wear-between';

/**
 * The wear each card of a car takes along from an event that is over to the next one: from when it was last done to the
 * last point of the itinerary, and one more event. Amounts of zero are left out.
 *
 * @param lastDone by card id; a card without an entry is taken as done just before the event
 * @example
 * carriedWear(knowledge, cards, lastDone)['pads'] // { stages: 3, stageMetres: 41200, …, events: 1 }
 */
export function carriedWear(
  knowledge: RouteKnowledge,
  cards: readonly LifingCard[],
  lastDone: ReadonlyMap<string, LastDone>,
): Record<string, Partial<Counters>> {
  const toIndex = knowledge.itinerary.points.length - 1;
  return Object.fromEntries(
    cards.map((card) => {
      const since = lastDone.get(card.id) ?? { pointIndex: null, carried: {} };
      const wear = wearBetween({ ...knowledge, card, lastDone: since, toIndex });
      const amounts = COUNTER_NAMES.map((name) => [name, wear[name] + (name === 'events' ? 1 : 0)] as const);
      return [card.id, Object.fromEntries(amounts.filter(([, amount]) => amount > 0))];
    }),
  );
}
