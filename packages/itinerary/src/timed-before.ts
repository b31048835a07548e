import type { Itinerary, Point } from './model';

/** A control on the road that no clock is kept at: a refuel without a target time. */
export function isTimedPoint(point: Point): boolean {
  return point.kind === 'stage' || point.allowedSeconds !== null || !point.roles.includes('refuel');
}

/** Index of the point a control's target time counts from: the last timed one before it; null before the first. */
export function timedBefore(itinerary: Itinerary, index: number): number | null {
  const before = itinerary.points.slice(0, index).findLastIndex(isTimedPoint);
  return before === -1 ? null : before;
}
