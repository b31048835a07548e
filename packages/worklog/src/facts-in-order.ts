import type { Itinerary } from '@halfshaft/itinerary';
import type { CarFact, CarFactKind, FactPlace, RecordedFact } from './car-fact';
import type { EntryId } from './model';
import { pointFinder } from './point-of-place';

/** A fact with the last point of the itinerary before it: it holds for stages of a larger index. */
export interface OrderedFact<Kind extends CarFactKind> {
  fact: Extract<CarFact, { kind: Kind }>;
  at: FactPlace;
  /** −1: before everything. */
  pointIndex: number;
  /** Of the log. */
  seq: number;
}

/** The point a part fitted there is driven from: what was fitted behind a stage has not been driven on it. */
export function drivenFrom(
  { at, pointIndex }: Pick<OrderedFact<CarFactKind>, 'at' | 'pointIndex'>,
  { points }: Itinerary,
): number {
  return at.kind === 'road' ? Math.min(pointIndex + 1, points.length - 1) : Math.max(pointIndex, 0);
}

/**
 * The facts of one kind of one car that stand, in the order in which they came about: by their point of the itinerary,
 * at one point by the log. So what was written down late falls where it belongs. A fact of a stage or service that the
 * itinerary no longer has stays beside the one recorded before it.
 *
 * @example
 * factsInOrder('tyre', facts, entryId, itinerary).map(({ fact }) => fact.place) // ['FL', 'service']
 */
export function factsInOrder<Kind extends CarFactKind>(
  kind: Kind,
  facts: Iterable<RecordedFact>,
  entryId: EntryId,
  itinerary: Itinerary,
): OrderedFact<Kind>[] {
  const pointOf = pointFinder(itinerary);
  const ordered: OrderedFact<Kind>[] = [];
  for (const { at, fact, changedSeq: seq } of standing(facts, entryId)) {
    if (!isOf(kind, fact)) continue;
    const known = at.kind === 'road' && at.afterStageId === null ? -1 : pointOf(at);
    ordered.push({ fact, at, pointIndex: known ?? ordered.at(-1)?.pointIndex ?? -1, seq });
  }
  return ordered.sort((one, other) => one.pointIndex - other.pointIndex);
}

function standing(facts: Iterable<RecordedFact>, entryId: EntryId): RecordedFact[] {
  return [...facts]
    .filter((recorded) => recorded.entryId === entryId && !recorded.withdrawn)
    .sort((one, other) => one.changedSeq - other.changedSeq);
}

function isOf<Kind extends CarFactKind>(kind: Kind, fact: CarFact): fact is Extract<CarFact, { kind: Kind }> {
  return fact.kind === kind;
}
