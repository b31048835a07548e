import type { Itinerary } from '../model';
import type { StopPlace } from './model';

/** Stage distance of the points before an index. */
function stageMetresBefore({ points }: Itinerary, index: number): number {
  return points
    .slice(0, index)
    .reduce((sum, point) => sum + (point.kind === 'stage' ? point.stageMetres : 0), 0);
}

/** Stage distance of the whole event, in metres. */
export function stageMetresOf(itinerary: Itinerary): number {
  return stageMetresBefore(itinerary, itinerary.points.length);
}

/** Stage distance that lies before a section, in metres; null when the itinerary has no such section. */
export function stageMetresBeforeSection(itinerary: Itinerary, section: number): number | null {
  const first = itinerary.points.findIndex((point) => point.section === section);
  return first === -1 ? null : stageMetresBefore(itinerary, first);
}

/**
 * Stage distance that a car has driven when it stops, in metres; null when the itinerary has no such point any more.
 *
 * After a control or a stage: all stages up to there. In a stage nobody has written down how far, so half of it counts,
 * which is what a life table does with whoever leaves inside an interval (Cutler & Ederer 1958, Journal of Chronic
 * Diseases 8:699-712).
 *
 * @example
 * stageMetresAtStop(itinerary, { relation: 'in', pointId: 'SS1' }) // 4900, of a first stage of 9.8 km
 */
export function stageMetresAtStop(itinerary: Itinerary, { relation, pointId }: StopPlace): number | null {
  const index = itinerary.points.findIndex(({ id }) => id === pointId);
  const point = itinerary.points[index];
  if (!point) return null;
  const before = stageMetresBefore(itinerary, index);
  if (point.kind === 'control') return before;
  return before + (relation === 'in' ? Math.round(point.stageMetres / 2) : point.stageMetres);
}
