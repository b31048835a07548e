import { dueAt, formatClock, type Itinerary, type PointTime, type StartPosition } from '@halfshaft/itinerary';

/** The times a drawing or list of the way shows. */
export interface RouteTimes {
  itinerary: Itinerary;
  /** By the timetable, for the car in this place of the start order. */
  startPosition: StartPosition;
  /** As written for the car, and due by that; absent: the timetable's. */
  times?: readonly PointTime[] | undefined;
}

/** The time of day at a point, as well as it is known. */
export function pointClock({ itinerary, startPosition, times }: RouteTimes, pointIndex: number): string {
  const at = times?.[pointIndex]?.at ?? dueAt(itinerary, pointIndex, startPosition);
  return formatClock(at, itinerary.timeZone);
}
