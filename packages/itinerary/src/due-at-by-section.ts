import { dueAt } from './due-at';
import type { EpochSeconds, Itinerary } from './model';
import type { PositionsBySection } from './position-in';

/**
 * When a car is due at a point if nothing runs late, with its start position set anew at regroups: the position of the
 * point's own section, at that section's intervals. Throws as `dueAt` and `positionIn` do.
 *
 * @example
 * dueAtBySection(itinerary, 12, new Map([[1, 12], [2, 9]])) // in section 2: first car + 8 intervals
 */
export function dueAtBySection(
  itinerary: Itinerary,
  pointIndex: number,
  positions: PositionsBySection,
): EpochSeconds {
  return dueAt(itinerary, pointIndex, positions);
}
