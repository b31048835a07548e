import type { EventReplica } from '@halfshaft/contract';
import type { StageId } from '@halfshaft/itinerary';
import type { Visit } from './visit';

/** The stages between this service and the next one, or the finish, in driving order. */
export function stagesAfter(
  { services, service, serviceIndex }: Visit,
  { itinerary }: EventReplica,
): StageId[] {
  const until = services[serviceIndex + 1]?.inIndex ?? itinerary.points.length;
  return itinerary.points
    .slice(service.outIndex, until)
    .flatMap((point) => (point.kind === 'stage' ? [point.id] : []));
}
