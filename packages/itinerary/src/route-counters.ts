import type { Itinerary, StageId, StageRun } from './model';
import { requirePoint } from './require-way';
import { type RouteSegment, segmentsBetween } from './route-segments';

/** What a car gathers along the way, in the units limits are written in. */
export interface RouteCounters {
  stages: number;
  stageMetres: number;
  /** Stage and road together. */
  totalMetres: number;
  /** Arrivals at service and remote service. */
  services: number;
  /** New legs begun. */
  days: number;
  /** Always 0 inside one event; there so that the counters of an event and of a season have one shape. */
  events: 0;
  /** Planned time on stages and road, without service, regroup, parc fermé and nights. */
  engineSeconds: number;
}

/**
 * What the car gathers from point `fromIndex` until it has arrived at point `toIndex`. A stage counts when the car
 * passes beyond its point. A stage confirmed as not driven adds nothing (no stage, no distance, no engine time), the
 * road after it counts in full; a stage nobody confirmed counts as planned.
 *
 * Throws when an index is no point or the way would go backwards.
 *
 * @example
 * routeCounters(itinerary, 2, 5, new Map()).stages // 1
 */
export function routeCounters(
  itinerary: Itinerary,
  fromIndex: number,
  toIndex: number,
  runs: ReadonlyMap<StageId, StageRun>,
): RouteCounters {
  const counters: RouteCounters = {
    stages: 0,
    stageMetres: 0,
    totalMetres: 0,
    services: 0,
    days: 0,
    events: 0,
    engineSeconds: 0,
  };
  for (const segment of segmentsBetween(itinerary, fromIndex, toIndex)) {
    if (isDriven(segment, runs)) addSegment(counters, segment);
  }
  return counters;
}

/**
 * How far the car has driven, in metres, when it arrives at a point: stages and road since the first point.
 *
 * @example
 * routeMetresAt(itinerary, 0) // 0
 */
export function routeMetresAt(itinerary: Itinerary, pointIndex: number): number {
  requirePoint('routeMetresAt', itinerary, pointIndex);
  return segmentsBetween(itinerary, 0, pointIndex).reduce((sum, segment) => sum + segment.metres, 0);
}

function isDriven(segment: RouteSegment, runs: ReadonlyMap<StageId, StageRun>): boolean {
  return segment.stageId === null || runs.get(segment.stageId)?.driven !== false;
}

function addSegment(counters: RouteCounters, segment: RouteSegment): void {
  if (segment.kind === 'stage') {
    counters.stages += 1;
    counters.stageMetres += segment.metres;
  }
  counters.totalMetres += segment.metres;
  counters.services += segment.startsService ? 1 : 0;
  counters.days += segment.startsLeg ? 1 : 0;
  counters.engineSeconds += segment.engineOn ? segment.endsAt - segment.startsAt : 0;
}
