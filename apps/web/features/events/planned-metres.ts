import {
  dueAt,
  type EpochSeconds,
  type Itinerary,
  routeMetresAt,
  type StartPosition,
} from '@halfshaft/itinerary';

/**
 * Where along the way the car in this start position is by plan, in whole metres from the start of the event; between
 * two points as if it drove evenly. Null before its start and after its last point.
 *
 * @example
 * plannedMetres(itinerary, 1, itinerary.points[0].firstCarAt) // 0
 */
export function plannedMetres(
  itinerary: Itinerary,
  startPosition: StartPosition,
  now: EpochSeconds,
): number | null {
  const after = itinerary.points.findIndex((_, index) => dueAt(itinerary, index, startPosition) > now);
  if (after <= 0) return null;
  const from = dueAt(itinerary, after - 1, startPosition);
  const to = dueAt(itinerary, after, startPosition);
  const fromMetres = routeMetresAt(itinerary, after - 1);
  const metres = routeMetresAt(itinerary, after) - fromMetres;
  return fromMetres + Math.round((metres * (now - from)) / (to - from));
}
