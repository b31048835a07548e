import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import {
  type EpochSeconds,
  formatClock,
  hasLeftService,
  hasReached,
  type PointTime,
  type ServiceWindow,
} from '@halfshaft/itinerary';
import type { WorkState } from '@halfshaft/worklog';
import { timesOfEntry } from '../control/lateness-of';
import { type VisitTimes, visitTimes } from '../control/visit-times';
import { type Visit, visitsOf } from '../service/visit';

/** One service as one car meets it: as written, until then as due by what was written before, at first by plan. */
export interface ServiceMoment {
  service: ServiceWindow;
  visit: Visit;
  times: VisitTimes;
  /** All of the car's times. */
  along: readonly PointTime[];
  inAt: EpochSeconds;
  outAt: EpochSeconds;
  /** Event-local, `10:49`. */
  inClock: string;
  outClock: string;
}

/** All services of an event for one car, in driving order. */
export function serviceMoments(
  replica: EventReplica,
  state: WorkState,
  entry: EntryReplica,
): ServiceMoment[] {
  const along = timesOfEntry(replica, state, entry);
  const clock = (at: EpochSeconds) => formatClock(at, replica.itinerary.timeZone);
  return visitsOf(replica, entry).map((visit) => {
    const times = visitTimes(replica, state, visit, along);
    const { inAt, outAt } = times;
    const { service } = visit;
    return { service, visit, times, along, inAt, outAt, inClock: clock(inAt), outClock: clock(outAt) };
  });
}

const SECONDS_IN_MINUTE = 60;
const MINUTES_IN_HOUR = 60;
const MINUTES_IN_DAY = 24 * MINUTES_IN_HOUR;

export interface MomentWords {
  kind: 'past' | 'now' | 'next';
  words: string;
}

/**
 * What to say beside a service: past ones, the one the car is in, and the next one with the time left until its
 * in-time. Null for those further on, and while the time is not known.
 *
 * @example
 * momentInWords(moments, 1, now) // { kind: 'next', words: 'next, in 42 min' }
 */
export function momentInWords(
  moments: readonly ServiceMoment[],
  index: number,
  now: EpochSeconds | null,
): MomentWords | null {
  const moment = moments[index];
  if (moment === undefined || now === null) return null;
  const { inAt, outAt } = moment;
  if (isPast(moment, now)) return { kind: 'past', words: 'past' };
  if (now >= outAt) return { kind: 'now', words: `now, over by ${spanInWords(now - outAt)}` };
  if (now >= inAt || isIn(moment)) return { kind: 'now', words: `now, out in ${spanInWords(outAt - now)}` };
  const isNext = index === moments.findIndex((one) => !isPast(one, now));
  return isNext ? { kind: 'next', words: `next, in ${spanInWords(inAt - now)}` } : null;
}

function isPast(moment: ServiceMoment, now: EpochSeconds): boolean {
  return hasLeftService(moment.service, moment.along, now) || (now >= moment.outAt && !isIn(moment));
}

/** Written in, at least. */
function isIn({ along, service }: ServiceMoment): boolean {
  return hasReached(along, service.inIndex);
}

/** Whole minutes, cut, so that nobody counts on a minute that is not there. */
function spanInWords(seconds: number): string {
  const minutes = Math.floor(seconds / SECONDS_IN_MINUTE);
  if (minutes < 2 * MINUTES_IN_HOUR) return `${minutes} min`;
  if (minutes < 2 * MINUTES_IN_DAY)
    return `${Math.floor(minutes / MINUTES_IN_HOUR)} h ${minutes % MINUTES_IN_HOUR} min`;
  return `${Math.floor(minutes / MINUTES_IN_DAY)} days`;
}
