import type { Itinerary, StageId, StageRun } from '@halfshaft/itinerary';
import type { FactPlace, RecordedFact, TyreId, TyrePlace } from './car-fact';
import { factsInOrder, type OrderedFact } from './facts-in-order';
import type { EntryId } from './model';

/** A value with where it was measured. */
export interface TyreMeasure {
  value: number;
  at: FactPlace;
}

/** One tyre of a car: where it is, what it has gone through, what was last measured. */
export interface TyreUse {
  tyreId: TyreId;
  mark: string;
  compound: string;
  place: TyrePlace;
  /** Has been on the car or carried as a spare: counts against the event's allowance (common practice, no source). */
  used: boolean;
  /** Stages driven while it was on the car. */
  stages: number;
  /** Their length, in metres. */
  stageMetres: number;
  /** Tenths of a millimetre. */
  tread: TyreMeasure | null;
  /** Millibar above the air's. */
  cold: TyreMeasure | null;
  hot: TyreMeasure | null;
}

export interface TyreQuestion {
  facts: Iterable<RecordedFact>;
  entryId: EntryId;
  itinerary: Itinerary;
  /** What the crew confirmed of its stages. */
  runs: ReadonlyMap<StageId, StageRun>;
  /** The point the car has come to: a stage before it counts unless confirmed as not driven, a later one only when confirmed. */
  untilIndex: number;
}

/** On one of the four corners, where it gathers distance. */
export function isOnCar(place: TyrePlace): boolean {
  return place === 'FL' || place === 'FR' || place === 'RL' || place === 'RR';
}

/**
 * Every tyre recorded for a car, in the order in which they came up. A corner and a spare's place hold one tyre: where
 * another is put there and nothing was said of the one before, that one is in the service area from then on.
 *
 * @example
 * tyresOf(question)[0] // { mark: 'L1', place: 'FL', stages: 2, stageMetres: 24_300, … }
 */
export function tyresOf(question: TyreQuestion): TyreUse[] {
  const waiting = factsInOrder('tyre', question.facts, question.entryId, question.itinerary);
  const tyres = new Map<TyreId, TyreUse>();
  question.itinerary.points.forEach((point, index) => {
    if (point.kind !== 'stage') return;
    while (waiting[0] && waiting[0].pointIndex < index) take(tyres, waiting.shift());
    const said = question.runs.get(point.id)?.driven;
    if (said ?? index < question.untilIndex) drive(tyres, point.stageMetres);
  });
  for (const fact of waiting) take(tyres, fact);
  return [...tyres.values()];
}

function take(tyres: Map<TyreId, TyreUse>, ordered: OrderedFact<'tyre'> | undefined): void {
  if (!ordered) return;
  const { fact, at } = ordered;
  const { tyreId, mark, compound, place } = fact;
  const before = tyres.get(tyreId);
  const measured = (value: number | null, last: TyreMeasure | null | undefined) =>
    value === null ? (last ?? null) : { value, at };
  makeRoom(tyres, tyreId, place);
  tyres.set(tyreId, {
    tyreId,
    mark,
    compound,
    place,
    used: before?.used === true || holdsOne(place),
    stages: before?.stages ?? 0,
    stageMetres: before?.stageMetres ?? 0,
    tread: measured(fact.treadTenths, before?.tread),
    cold: measured(fact.coldMillibar, before?.cold),
    hot: measured(fact.hotMillibar, before?.hot),
  });
}

function holdsOne(place: TyrePlace): boolean {
  return place !== 'service' && place !== 'scrapped';
}

function makeRoom(tyres: Map<TyreId, TyreUse>, newcomer: TyreId, place: TyrePlace): void {
  if (!holdsOne(place)) return;
  for (const [id, tyre] of tyres) {
    if (id !== newcomer && tyre.place === place) tyres.set(id, { ...tyre, place: 'service' });
  }
}

function drive(tyres: Map<TyreId, TyreUse>, stageMetres: number): void {
  for (const [id, tyre] of tyres) {
    if (!isOnCar(tyre.place)) continue;
    tyres.set(id, { ...tyre, stages: tyre.stages + 1, stageMetres: tyre.stageMetres + stageMetres });
  }
}
