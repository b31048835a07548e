import { haltsAfterEachPoint } from './halt-windows';
import type { EpochSeconds, Itinerary, Point, StageId, StagePoint } from './model';
import { requireWay } from './require-way';
import { estimateStageEnd } from './stage-end';

/** One piece of the way: a stage, a road, or standing still between two controls at the same place. */
export interface RouteSegment {
  kind: 'road' | 'stage' | 'halt';
  /** The stage driven, on a stage segment only. */
  stageId: StageId | null;
  /** Indexes into `Itinerary.points`. A stage and the road after it share both. */
  fromIndex: number;
  toIndex: number;
  metres: number;
  /** Planned times of the car in start position 1. Where a stage ends is an estimate (`estimateStageEnd`). */
  startsAt: EpochSeconds;
  endsAt: EpochSeconds;
  /** Its end is the arrival at a service or remote service in-control. */
  startsService: boolean;
  /** Its end is the first point of a new leg. */
  startsLeg: boolean;
  /** False inside service, remote service, regroup and parc fermé, and from one leg to the next. */
  engineOn: boolean;
}

/**
 * The way from one point to a later one, in driving order and without holes: each segment ends when the next one
 * starts, and the metres add up to the distance driven.
 *
 * A stage point stands at its start line, so its own distance comes after it: a `stage` segment, then the `road` to
 * the next control. From a time control to the start line of its stage is a `road` of 0 m. A `halt` lies between two
 * controls at the same place. From a point to itself there is no segment.
 *
 * Throws when an index is no point of the itinerary or when the way would go backwards.
 *
 * @example
 * segmentsBetween(itinerary, 0, 2).map((segment) => segment.kind) // ['halt', 'road']: service in, out, time control
 */
export function segmentsBetween(itinerary: Itinerary, fromIndex: number, toIndex: number): RouteSegment[] {
  requireWay('segmentsBetween', itinerary, fromIndex, toIndex);
  const halts = haltsAfterEachPoint(itinerary.points);
  const way = itinerary.points.slice(fromIndex, toIndex + 1);
  return way.flatMap((from, offset) => {
    const to = way[offset + 1];
    if (!to) return [];
    const index = fromIndex + offset;
    const standing = halts[index]?.size !== 0;
    return piecesBetween(itinerary, from, to, index, standing);
  });
}

function piecesBetween(
  itinerary: Itinerary,
  from: Point,
  to: Point,
  index: number,
  standing: boolean,
): RouteSegment[] {
  const arrival: RouteSegment = {
    kind: from.kind === 'control' && to.kind === 'control' && to.roadMetres === 0 ? 'halt' : 'road',
    stageId: null,
    fromIndex: index,
    toIndex: index + 1,
    metres: to.kind === 'control' ? to.roadMetres : 0,
    startsAt: from.firstCarAt,
    endsAt: to.firstCarAt,
    startsService:
      to.kind === 'control' && to.roles.some((role) => role === 'serviceIn' || role === 'remoteServiceIn'),
    startsLeg: to.leg > from.leg,
    engineOn: !standing && to.leg === from.leg,
  };
  if (from.kind === 'control') return [arrival];
  const stageEndsAt = Math.min(to.firstCarAt, stageEndOf(itinerary, from, index));
  const stage: RouteSegment = {
    ...arrival,
    kind: 'stage',
    stageId: from.id,
    metres: from.stageMetres,
    endsAt: stageEndsAt,
    startsService: false,
    startsLeg: false,
    engineOn: true,
  };
  return [stage, { ...arrival, startsAt: stageEndsAt }];
}

function stageEndOf(itinerary: Itinerary, stage: StagePoint, index: number): EpochSeconds {
  let roadMetres = 0;
  let timedControl: { firstCarAt: EpochSeconds; allowedSeconds: number | null } | null = null;
  for (const point of itinerary.points.slice(index + 1)) {
    if (point.kind === 'stage') break;
    roadMetres += point.roadMetres;
    timedControl = point;
    // A refuel without a target time lies on the road; the time allowed runs through it.
    if (!point.roles.includes('refuel') || point.allowedSeconds !== null) break;
  }
  return estimateStageEnd({
    stageStartsAt: stage.firstCarAt,
    stageMetres: stage.stageMetres,
    roadMetres,
    nextControlAt: timedControl?.firstCarAt ?? null,
    allowedSeconds: timedControl?.allowedSeconds ?? null,
    roadTimedFrom: itinerary.roadTimedFrom,
  });
}
