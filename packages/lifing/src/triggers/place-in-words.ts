import type { Itinerary, ServiceId, ServiceWindow } from '@halfshaft/itinerary';
import { nameOfService } from '../name-of-service';

/** Where something happened, as a crew says it. */
export function placeInWords(
  {
    itinerary,
    services,
    serviceName,
  }: {
    itinerary: Itinerary;
    services: readonly ServiceWindow[];
    serviceName?: (id: ServiceId) => string;
  },
  pointIndex: number,
): string {
  const service = services.find((each) => each.inIndex === pointIndex);
  if (service !== undefined) return `at ${nameOfService(service.id, serviceName)}`;
  const point = itinerary.points[pointIndex];
  if (point === undefined) throw new RangeError(`judgeTriggers: there is no point ${pointIndex}.`);
  return point.kind === 'stage' ? `on ${point.id}` : `after ${point.id}`;
}
