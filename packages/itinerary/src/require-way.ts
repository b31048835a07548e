import type { Itinerary, Point } from './model';

/** Throws a sentence naming `caller` unless both indexes are points and the way goes forwards. */
export function requireWay(caller: string, itinerary: Itinerary, fromIndex: number, toIndex: number): void {
  requirePoint(caller, itinerary, fromIndex);
  requirePoint(caller, itinerary, toIndex);
  if (toIndex < fromIndex) {
    throw new RangeError(`${caller}: the way from point ${fromIndex} to point ${toIndex} goes backwards`);
  }
}

/** The point at `index`; throws a sentence naming `caller` when there is none. */
export function requirePoint(caller: string, itinerary: Itinerary, index: number): Point {
  const point = Number.isInteger(index) ? itinerary.points[index] : undefined;
  if (!point) {
    throw new RangeError(
      `${caller}: ${index} is no point of an itinerary of ${itinerary.points.length} points`,
    );
  }
  return point;
}
