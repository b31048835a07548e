import type { Itinerary } from '@halfshaft/itinerary';
import type { PartEvent } from '@halfshaft/lifing';
import type { TyreId } from './car-fact';
import { closingSeqs } from './closing-seqs';
import { drivenFrom, factsInOrder } from './facts-in-order';
import type { EntryId, Task } from './model';
import { pointFinder } from './point-of-place';
import type { WorkState } from './state';
import { isOnCar } from './tyres-of';

/**
 * What was read of the parts of one car, and when a new part went on, in the order in which it came about: by the point
 * of the route, the road before the service at its end, and at one point by the log. What was taken back is left out; so
 * is what belongs to a service that the itinerary no longer has, since it has no point to count from. Of two values of
 * one place in one piece of work the later one stands. A task that is done comes before what was read with it: a card
 * that changes parts reads the new ones.
 *
 * @param state the whole state of the event, not a slice
 * @example
 * readingsOf(state, itinerary, entryId) // [{ kind: 'read', cardId: 'corner', position: 'FL', value: 41, … }]
 */
export function readingsOf(state: WorkState, itinerary: Itinerary, entryId: EntryId): PartEvent[] {
  return [
    ...workIn(state, itinerary, entryId),
    ...fittedIn(state, itinerary, entryId),
    ...tyresIn(state, itinerary, entryId),
  ]
    .sort(compare)
    .map(({ event }) => event);
}

interface PlacedEvent {
  event: PartEvent;
  /** On the road up to the point, or in the service that begins there. */
  inService: boolean;
  seq: number;
}

function compare(one: PlacedEvent, other: PlacedEvent): number {
  return (
    one.event.pointIndex - other.event.pointIndex ||
    Number(one.inService) - Number(other.inService) ||
    one.seq - other.seq
  );
}

function workIn(state: WorkState, itinerary: Itinerary, entryId: EntryId): PlacedEvent[] {
  const pointOf = pointFinder(itinerary);
  const closedAt = closingSeqs(state);
  return [...state.tasks.values()].flatMap((task) => {
    const { serviceId, source } = task.ref;
    const pointIndex = pointOf({ kind: 'service', serviceId });
    if (task.ref.entryId !== entryId || source.kind !== 'card' || pointIndex === null) return [];
    const { cardId } = source;
    const done: PartEvent[] = task.state === 'done' ? [{ kind: 'done', cardId, pointIndex }] : [];
    const read = lastOfEachPlace(task).map(
      (reading): PartEvent => ({ kind: 'read', cardId, serviceId, pointIndex, ...reading }),
    );
    const seq = closedAt.get(task.id) ?? task.changedSeq;
    return [...done, ...read].map((event) => ({ event, inService: true, seq }));
  });
}

function lastOfEachPlace({ readings }: Task) {
  return [
    ...new Map(
      readings.map((reading) => [JSON.stringify([reading.readingId, reading.position]), reading]),
    ).values(),
  ];
}

function fittedIn(state: WorkState, itinerary: Itinerary, entryId: EntryId): PlacedEvent[] {
  return factsInOrder('fitted', state.facts.values(), entryId, itinerary).map((placed) => {
    const { cardId, position } = placed.fact;
    const event = { kind: 'fitted' as const, cardId, position, pointIndex: drivenFrom(placed, itinerary) };
    return { event, inService: placed.at.kind === 'service', seq: placed.seq };
  });
}

/** Every tyre that comes on to a wheel; measured again where it is already, it is the same part. */
function tyresIn(state: WorkState, itinerary: Itinerary, entryId: EntryId): PlacedEvent[] {
  const on = new Map<string, TyreId>();
  return factsInOrder('tyre', state.facts.values(), entryId, itinerary).flatMap((placed) => {
    const { place: wheel, tyreId, compound } = placed.fact;
    const before = on.get(wheel);
    if (!isOnCar(wheel) || before === tyreId) return [];
    on.set(wheel, tyreId);
    const pointIndex = drivenFrom(placed, itinerary);
    const event = { kind: 'tyreOn' as const, wheel, compound, replaces: before !== undefined, pointIndex };
    return [{ event, inService: placed.at.kind === 'service', seq: placed.seq }];
  });
}
