import type { EventReplica } from '@halfshaft/contract';
import { formatClock, formatDay, positionIn, positionsOf, toWholeMinute } from '@halfshaft/itinerary';
import type { VisitTimes } from '../control/visit-times';
import { serviceNameOf } from '../work/names';
import type { Visit } from './visit';

const SECONDS_IN_MINUTE = 60;

/** "Service B · 20 min" */
export function visitTitle(replica: EventReplica, { service }: Visit): string {
  const minutes = Math.floor(service.allowedSeconds / SECONDS_IN_MINUTE);
  // Neither the letter nor the unit may stand alone on a line.
  return `${serviceNameOf(replica, service.id).replace(/ (\S+)$/, '\u00a0$1')} · ${minutes}\u00a0min`;
}

/** The order may be set anew at a regroup: the section the car comes in from. */
function sectionAt({ itinerary }: EventReplica, { service }: Visit): number {
  return itinerary.points[service.inIndex]?.section ?? 1;
}

/** The ruled line under the title. */
export function visitFacts(replica: EventReplica, visit: Visit, times: VisitTimes): string[] {
  const { timeZone } = replica.itinerary;
  const { entry, service } = visit;
  const { inAt, outAt, recordedIn, recordedOut } = times;
  const clock = (at: number) => formatClock(at, timeZone);
  const expected = inAt === toWholeMinute(visit.inAt) ? 'planned ' : 'due ';
  return [
    formatDay(inAt, timeZone),
    `${recordedIn ? '' : expected}in ${clock(inAt)} at ${service.inControl}`,
    `${recordedOut || recordedIn ? '' : expected}out ${clock(outAt)} at ${service.outControl}`,
    `start position ${positionIn(positionsOf(entry), sectionAt(replica, visit))}`,
    entry.people === 1 ? '1 person' : `${entry.people} people`,
  ];
}
