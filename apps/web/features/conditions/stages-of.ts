import type { Itinerary, StagePoint } from '@halfshaft/itinerary';

/** The stages in driving order. */
export function stagesOf({ points }: Itinerary): StagePoint[] {
  return points.flatMap((point) => (point.kind === 'stage' ? [point] : []));
}
