import type { EventReplica } from '@halfshaft/contract';
import { type EpochSeconds, formatClock, formatDay, type Itinerary } from '@halfshaft/itinerary';
import type { ReasonNames } from '@halfshaft/lifing';
import { serviceNameOf } from '../work/names';

/** "14:32", or "Sun 14:32" where the day is not the one of `beside`. */
export function clockBeside(at: EpochSeconds, beside: EpochSeconds, { timeZone }: Itinerary): string {
  const clock = formatClock(at, timeZone);
  const day = formatDay(at, timeZone);
  return day === formatDay(beside, timeZone) ? clock : `${day.slice(0, 3)} ${clock}`;
}

/** How reasons are to be worded on a screen about one moment of an event. */
export function reasonNamesOf(replica: EventReplica, beside: EpochSeconds): ReasonNames {
  return {
    clock: (at) => clockBeside(at, beside, replica.itinerary),
    serviceName: (id) => serviceNameOf(replica, id),
  };
}
