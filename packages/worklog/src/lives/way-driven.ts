import { type Itinerary, type RouteSegment, type StageId, segmentsBetween } from '@halfshaft/itinerary';
import type { CarFact, RecordedFact } from '../car-fact';
import { drivenFrom } from '../facts-in-order';
import { type PointOf, pointFinder } from '../point-of-place';
import type { LoggedEvent } from './logged-event';

type OutFact = Extract<CarFact, { kind: 'out' }>;

/** Where the car stopped or went on, at points of the itinerary, in the order driven. */
export type Halt = { kind: 'out'; point: number; fact: OutFact } | { kind: 'restarted'; point: number };

export interface WayDriven {
  /** By counter, what the car had really run at each point of the itinerary. */
  counted: Record<LifeCounter, number[]>;
  halts: Halt[];
  /** Reached the end, or the event is not over yet. */
  finished: boolean;
}

/** What a life can be counted in. */
export const LIFE_COUNTERS = ['stages', 'stageMetres', 'totalMetres', 'engineSeconds'] as const;
export type LifeCounter = (typeof LIFE_COUNTERS)[number];

/**
 * How far one car really got at one event. Stages said to be driven count, stages said not to be don't. One that nobody
 * spoke of counts when the log has the car beyond it and it was not out then. Rules W1 to W6 of reliability's rules.md.
 *
 * @example
 * wayDriven(logged).counted.stageMetres.at(-1) // 97650
 */
export function wayDriven(logged: LoggedEvent, pointOf: PointOf = pointFinder(logged.itinerary)): WayDriven {
  const { itinerary, isOver } = logged;
  const said = new Map(logged.stages.map(({ stageId, driven }) => [stageId, driven]));
  const spoken = spokenHalts(logged, pointOf);
  const furthest = furthestPoint(logged, pointOf);
  const way: WayDriven = { counted: emptyCounts(), halts: [], finished: false };
  const pieces = segmentsBetween(itinerary, 0, itinerary.points.length - 1);
  let isOut = false;
  for (const [index, point] of itinerary.points.entries()) {
    for (const halt of spoken.filter((each) => each.point === index)) {
      if ((halt.kind === 'out') === isOut) continue;
      isOut = halt.kind === 'out';
      way.halts.push(halt);
    }
    const isDriven = point.kind === 'stage' ? said.get(point.id) : undefined;
    if (isOut && isDriven) {
      isOut = false;
      way.halts.push({ kind: 'restarted', point: index });
    }
    const stopsHere = spoken.some((halt) => halt.kind === 'out' && halt.from === index);
    const moves = !isOut && index < furthest;
    if (index + 1 === itinerary.points.length) break;
    const driven = { stage: moves && (isDriven ?? !stopsHere), road: moves && !stopsHere };
    const from = pieces.filter(({ fromIndex }) => fromIndex === index);
    addWay(
      way,
      from.filter(({ kind }) => (kind === 'stage' ? driven.stage : driven.road)),
    );
  }
  way.finished = !isOver || (!isOut && furthest > lastStageIndex(itinerary, said));
  return way;
}

function emptyCounts(): WayDriven['counted'] {
  return { stages: [0], stageMetres: [0], totalMetres: [0], engineSeconds: [0] };
}

function addWay({ counted }: WayDriven, pieces: readonly RouteSegment[]): void {
  const stages = pieces.filter(({ kind }) => kind === 'stage');
  const metres = (of: readonly RouteSegment[]) => of.reduce((sum, piece) => sum + piece.metres, 0);
  const running = pieces.filter(({ engineOn }) => engineOn);
  const add = (counter: LifeCounter, more: number) =>
    counted[counter].push((counted[counter].at(-1) ?? 0) + more);
  add('stages', stages.length);
  add('stageMetres', metres(stages));
  add('totalMetres', metres(pieces));
  add(
    'engineSeconds',
    running.reduce((sum, { startsAt, endsAt }) => sum + endsAt - startsAt, 0),
  );
}

type SpokenHalt = Halt & {
  /** The stage on or behind which the car stopped; −1 at a service. */
  from: number;
};

/** In the order driven; of several words that the car is out, the place of the first and the cause said last. */
function spokenHalts({ facts, itinerary }: LoggedEvent, pointOf: PointOf): SpokenHalt[] {
  const placed = facts
    .flatMap((recorded) => placeHalt(recorded, pointOf, itinerary))
    .sort((one, other) => one.halt.point - other.halt.point || one.seq - other.seq);
  const halts: { halt: SpokenHalt; seq: number }[] = [];
  for (const next of placed) {
    const last = halts.at(-1);
    if (last?.halt.kind !== 'out' || next.halt.kind !== 'out') halts.push(next);
    else if (next.seq > last.seq) {
      halts[halts.length - 1] = { halt: { ...last.halt, fact: next.halt.fact }, seq: next.seq };
    }
  }
  return halts.map(({ halt }) => halt);
}

function placeHalt(
  { fact, at, changedSeq: seq }: RecordedFact,
  pointOf: PointOf,
  itinerary: Itinerary,
): { halt: SpokenHalt; seq: number }[] {
  const pointIndex = pointOf(at);
  if (pointIndex === null) return [];
  const isBehindStage = at.kind === 'road' && at.afterStageId !== null;
  const point = isBehindStage ? drivenFrom({ at, pointIndex }, itinerary) : pointIndex;
  const from = isBehindStage ? pointIndex : -1;
  if (fact.kind === 'out') return [{ halt: { kind: 'out', point, fact, from }, seq }];
  return fact.kind === 'restarted' ? [{ halt: { kind: 'restarted', point, from }, seq }] : [];
}

/** The last point at which the log has the car. */
function furthestPoint({ itinerary, stages, times, workedAt, facts }: LoggedEvent, pointOf: PointOf): number {
  const indexOf = new Map(itinerary.points.map((point, index) => [point.id, index]));
  const at = (index: number | null | undefined, beyond = 0) =>
    index === null || index === undefined ? 0 : Math.min(index + beyond, itinerary.points.length - 1);
  return Math.max(
    0,
    ...stages.filter(({ driven }) => driven).map(({ stageId }) => at(indexOf.get(stageId), 1)),
    ...times.map(({ controlId, finish }) => at(indexOf.get(controlId), finish ? 1 : 0)),
    ...workedAt.map((serviceId) => at(pointOf({ kind: 'service', serviceId }))),
    ...facts.map((recorded) => at(pointOf(recorded.at))),
  );
}

/** The last stage that was not called off or left out; −1 when there is none. */
function lastStageIndex({ points }: Itinerary, said: ReadonlyMap<StageId, boolean>): number {
  return points.findLastIndex((point) => point.kind === 'stage' && said.get(point.id) !== false);
}
