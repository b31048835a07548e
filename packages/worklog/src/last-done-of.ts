import type { Itinerary, ServiceWindow } from '@halfshaft/itinerary';
import type { Counters, JobCard, LastDone } from '@halfshaft/lifing';
import type { RecordedFact } from './car-fact';
import { drivenFrom, factsInOrder } from './facts-in-order';
import { fittedAt } from './fitted-at';
import type { CardId, EntryId, Task } from './model';

/** What was written down of the whole event. */
export interface DoneSoFar {
  tasks: Iterable<Task>;
  facts: Iterable<RecordedFact>;
}

/** How far along the route it is asked for. */
export interface DoneUntil {
  itinerary: Itinerary;
  /** Work at these counts. */
  services: readonly ServiceWindow[];
  /** Facts up to this point count, the point included. */
  untilIndex: number;
}

/** The car it is asked of. */
export interface DoneOnCar {
  entryId: EntryId;
  cards: readonly Pick<JobCard, 'id' | 'readings' | 'place'>[];
  /** By card id: wear brought along from before the event. */
  carried: Readonly<Record<CardId, Partial<Counters>>>;
}

/**
 * When each card of one car was last done at this event: at the latest service whose task for it is done, where new parts
 * went on all round, or where somebody said it was done away from a service, whichever was last. A card with none of
 * these keeps the wear it carried in. A task of a service the itinerary no longer has is passed over.
 *
 * @example
 * lastDoneOf({ tasks, facts }, { itinerary, services, untilIndex: 9 }, entry).get('nuts') // { pointIndex: 9, carried: null }
 */
export function lastDoneOf(
  { tasks, facts }: DoneSoFar,
  { itinerary, services, untilIndex }: DoneUntil,
  { entryId, cards, carried }: DoneOnCar,
): Map<CardId, LastDone> {
  const lastDone = new Map<CardId, LastDone>(
    Object.entries(carried).map(([cardId, wear]) => [cardId, { pointIndex: null, carried: wear }]),
  );
  const inIndexOf = new Map(services.map((service) => [service.id, service.inIndex]));
  for (const { ref, state } of tasks) {
    if (state !== 'done' || ref.entryId !== entryId || ref.source.kind !== 'card') continue;
    const pointIndex = inIndexOf.get(ref.serviceId);
    if (pointIndex === undefined) continue;
    note(lastDone, ref.source.cardId, pointIndex);
  }
  const recorded = [...facts];
  const fitted = fittedAt(recorded, itinerary, entryId, cards, untilIndex);
  for (const { cardId, pointIndex } of fitted) note(lastDone, cardId, pointIndex);
  for (const prepared of factsInOrder('prepared', recorded, entryId, itinerary)) {
    const pointIndex = drivenFrom(prepared, itinerary);
    if (pointIndex > untilIndex) continue;
    for (const cardId of prepared.fact.cardIds) note(lastDone, cardId, pointIndex);
  }
  return lastDone;
}

function note(lastDone: Map<CardId, LastDone>, cardId: CardId, pointIndex: number): void {
  const known = lastDone.get(cardId)?.pointIndex ?? -1;
  if (pointIndex > known) lastDone.set(cardId, { pointIndex, carried: null });
}
