import { type Itinerary, servicesOf } from '@halfshaft/itinerary';
import type { FactPlace } from './car-fact';

/** The point of the itinerary where a fact belongs; null when the itinerary has no such stage or service any more. */
export type PointOf = (at: FactPlace) => number | null;

/**
 * A finder of points: a service counts at its in-control, the road after a stage at that stage, the road before the
 * first stage at point 0.
 *
 * @example
 * pointFinder(itinerary)({ kind: 'service', serviceId: 'B' }) // 14
 */
export function pointFinder(itinerary: Itinerary): PointOf {
  const services = new Map(servicesOf(itinerary).map((service) => [service.id, service.inIndex]));
  const stages = new Map(
    itinerary.points.flatMap((point, index) => (point.kind === 'stage' ? [[point.id, index] as const] : [])),
  );
  return (at) => {
    if (at.kind === 'service') return services.get(at.serviceId) ?? null;
    return at.afterStageId === null ? 0 : (stages.get(at.afterStageId) ?? null);
  };
}
