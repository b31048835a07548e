import type { Itinerary } from '@halfshaft/itinerary';
import { CORNERS, isAtPosition, type JobCard, positionsOfCard } from '@halfshaft/lifing';
import type { RecordedFact } from './car-fact';
import { drivenFrom, factsInOrder } from './facts-in-order';
import type { CardId, EntryId } from './model';

/** The point a card's parts are new from, all of them. */
export interface FittedAt {
  cardId: CardId;
  pointIndex: number;
}

/**
 * Since when each card's parts are new although the card was not done, as `lastDoneOf` asks for it. New parts at every
 * place of the card count from the oldest of them; as long as one place is left with its old part, nothing is new.
 *
 * @param untilIndex the point up to which it is asked, included
 * @example
 * fittedAt(state.facts.values(), itinerary, entryId, cards, 14) // [{ cardId: 'belt', pointIndex: 9 }]
 */
export function fittedAt(
  facts: Iterable<RecordedFact>,
  itinerary: Itinerary,
  entryId: EntryId,
  cards: readonly Pick<JobCard, 'id' | 'readings' | 'place'>[],
  untilIndex: number,
): FittedAt[] {
  const fitted = factsInOrder('fitted', facts, entryId, itinerary)
    .map((placed) => ({ ...placed.fact, pointIndex: drivenFrom(placed, itinerary) }))
    .filter(({ pointIndex }) => pointIndex <= untilIndex);
  return cards.flatMap((card) => {
    const own = fitted.filter(({ cardId }) => cardId === card.id);
    const points = placesOf(card).map((place) =>
      Math.max(
        -1,
        ...own.filter(({ position }) => isAtPosition(position, place)).map((each) => each.pointIndex),
      ),
    );
    const pointIndex = Math.min(...points);
    return pointIndex < 0 ? [] : [{ cardId: card.id, pointIndex }];
  });
}

/** A card that says nothing of places may have parts at all four wheels. */
function placesOf(card: Pick<JobCard, 'readings' | 'place'>): readonly string[] {
  const positions = positionsOfCard(card);
  return positions.length > 0 ? positions : CORNERS;
}
