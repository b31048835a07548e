import type { ControlId, Itinerary } from '../model';
import { servicesOf } from '../services-of';
import type { ItineraryChange } from './itinerary-change';

/**
 * Services that came, went, or have more or fewer minutes. `told` are the out-controls whose target time changed by just
 * that, so that it need not be said twice.
 */
export function compareServices(
  before: Itinerary,
  after: Itinerary,
): { changes: ItineraryChange[]; told: Set<ControlId> } {
  const earlier = servicesOf(before);
  const later = servicesOf(after);
  const told = new Set<ControlId>();
  const changes: ItineraryChange[] = [];
  for (const { kind: service, id: serviceId, inControl, allowedSeconds: seconds } of earlier) {
    if (!later.some((one) => one.inControl === inControl)) {
      changes.push({ kind: 'serviceCancelled', service, serviceId, inControl, seconds });
    }
  }
  for (const visit of later) {
    const { kind: service, id: serviceId, inControl, allowedSeconds: afterSeconds } = visit;
    const same = earlier.find((one) => one.inControl === inControl);
    if (!same) changes.push({ kind: 'serviceAdded', service, serviceId, inControl, seconds: afterSeconds });
    else if (same.allowedSeconds !== afterSeconds) {
      const beforeSeconds = same.allowedSeconds;
      changes.push({ kind: 'serviceLength', service, serviceId, inControl, beforeSeconds, afterSeconds });
      if (
        targetOf(before, visit.outControl) === beforeSeconds &&
        targetOf(after, visit.outControl) === afterSeconds
      ) {
        told.add(visit.outControl);
      }
    }
  }
  return { changes, told };
}

function targetOf(itinerary: Itinerary, id: ControlId): number | null {
  const point = itinerary.points.find((one) => one.id === id);
  return point?.kind === 'control' ? point.allowedSeconds : null;
}
