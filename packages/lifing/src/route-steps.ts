import {
  dueAt,
  type EpochSeconds,
  type Itinerary,
  type RouteSegment,
  type StartPosition,
  segmentsBetween,
} from '@halfshaft/itinerary';

/** A piece of the route with the metres driven before it and the times of one car. */
export interface RouteStep {
  segment: RouteSegment;
  metresBefore: number;
  startsAt: EpochSeconds;
  endsAt: EpochSeconds;
}

/** The whole route in driving order, timed for the car in this start position. */
export function routeSteps(itinerary: Itinerary, position: StartPosition): RouteStep[] {
  const behindFirstCar = (index: number) => dueAt(itinerary, index, position) - dueAt(itinerary, index, 1);
  let metresBefore = 0;
  return segmentsBetween(itinerary, 0, itinerary.points.length - 1).map((segment) => {
    // The finish line of a stage is no point of its own: a car crosses it as far behind as it started the stage.
    const endIndex = segment.kind === 'stage' ? segment.fromIndex : segment.toIndex;
    const step = {
      segment,
      metresBefore,
      startsAt: segment.startsAt + behindFirstCar(segment.fromIndex),
      endsAt: segment.endsAt + behindFirstCar(endIndex),
    };
    metresBefore += segment.metres;
    return step;
  });
}
