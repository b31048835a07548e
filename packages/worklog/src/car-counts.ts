import type { Itinerary } from '@halfshaft/itinerary';
import type { CarPlace, IncidentCode, JobCard } from '@halfshaft/lifing';
import type { RecordedFact } from './car-fact';
import { textInKeyOrder } from './content-key';
import type { EntryId, Finding, Snag, StageConfirmation, Task } from './model';

/** What one car did and what was found on it at one event, as numbers that name nobody. */
export interface CarCounts {
  stages: number;
  stageMetres: number;
  /** How often each thing happened on the road. */
  incidents: Partial<Record<IncidentCode, number>>;
  /** Snags raised, by where on the car. */
  snags: Partial<Record<CarPlace, number>>;
  /** Findings that need work, or got a temporary repair, by where on the car. */
  needsWork: Partial<Record<CarPlace, number>>;
}

const PLACES: Readonly<Record<CarPlace, true>> = {
  engineBay: true,
  underCar: true,
  frontLeft: true,
  frontRight: true,
  rearLeft: true,
  rearRight: true,
  allCorners: true,
  cockpit: true,
  body: true,
  boot: true,
  wholeCar: true,
};
const IS_TROUBLE: Readonly<Record<Finding['grade'], boolean>> = {
  ok: false,
  watch: false,
  needsWork: true,
  temporaryRepair: true,
};

/** What the log of one event has. */
export interface EventLog {
  tasks: Iterable<Task>;
  snags: Iterable<Snag>;
  facts: Iterable<RecordedFact>;
  stages: Iterable<StageConfirmation>;
}

/**
 * Counts what the log says of one car at one event, leaving out every name, word and time. A place that somebody put in words
 * of their own counts as the whole car, since words could name someone. What was taken back is not counted.
 */
export function carCountsOf(
  log: EventLog,
  entryId: EntryId,
  { itinerary, cards }: { itinerary: Itinerary; cards: readonly JobCard[] },
): CarCounts {
  const driven = new Set<string>();
  for (const stage of log.stages) if (stage.entryId === entryId && stage.driven) driven.add(stage.stageId);
  const counts: CarCounts = { stages: 0, stageMetres: 0, incidents: {}, snags: {}, needsWork: {} };
  for (const point of itinerary.points) {
    if (point.kind !== 'stage' || !driven.has(point.id)) continue;
    counts.stages += 1;
    counts.stageMetres += point.stageMetres;
  }
  for (const { entryId: of, fact, withdrawn } of log.facts) {
    if (of === entryId && !withdrawn && fact.kind === 'incident') addOne(counts.incidents, fact.code);
  }
  for (const snag of log.snags) {
    if (snag.entryId === entryId && !snag.withdrawn) addOne(counts.snags, placeOf(snag.place));
  }
  const placeOfCard = new Map(cards.map((card) => [card.id, card.place]));
  for (const { ref, findings } of log.tasks) {
    if (ref.entryId !== entryId || ref.source.kind !== 'card') continue;
    const place = placeOfCard.get(ref.source.cardId) ?? 'wholeCar';
    for (const { grade } of findings) if (IS_TROUBLE[grade]) addOne(counts.needsWork, place);
  }
  return counts;
}

/** All cars together. */
export function sumOfCounts(cars: readonly CarCounts[]): CarCounts {
  const sum: CarCounts = { stages: 0, stageMetres: 0, incidents: {}, snags: {}, needsWork: {} };
  for (const car of cars) {
    sum.stages += car.stages;
    sum.stageMetres += car.stageMetres;
    addAll(sum.incidents, car.incidents);
    addAll(sum.snags, car.snags);
    addAll(sum.needsWork, car.needsWork);
  }
  return sum;
}

/** True when both say the same of the same cars, in whatever order their keys come back from a database. */
export function isSameCounts(some: readonly CarCounts[], others: readonly CarCounts[]): boolean {
  return textInKeyOrder(some) === textInKeyOrder(others);
}

function placeOf(place: string): CarPlace {
  return Object.hasOwn(PLACES, place) ? (place as CarPlace) : 'wholeCar';
}

function addOne<Key extends string>(to: Partial<Record<Key, number>>, key: Key): void {
  to[key] = (to[key] ?? 0) + 1;
}

function addAll<Key extends string>(
  to: Partial<Record<Key, number>>,
  more: Partial<Record<Key, number>>,
): void {
  for (const [key, count] of Object.entries(more) as [Key, number][]) to[key] = (to[key] ?? 0) + count;
}
