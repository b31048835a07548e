import {
  dueAt,
  type EpochSeconds,
  formatClock,
  type Itinerary,
  type ServiceWindow,
  type StartPosition,
} from '@halfshaft/itinerary';

/** One service as one car meets it by plan. */
export interface ServiceMoment {
  service: ServiceWindow;
  inAt: EpochSeconds;
  outAt: EpochSeconds;
  /** Event-local, `10:49`. */
  inClock: string;
  outClock: string;
}

/** All services of an event for the car in this start position, in driving order. */
export function serviceMoments(
  itinerary: Itinerary,
  services: readonly ServiceWindow[],
  startPosition: StartPosition,
): ServiceMoment[] {
  return services.map((service) => {
    const inAt = dueAt(itinerary, service.inIndex, startPosition);
    const outAt = dueAt(itinerary, service.outIndex, startPosition);
    return {
      service,
      inAt,
      outAt,
      inClock: formatClock(inAt, itinerary.timeZone),
      outClock: formatClock(outAt, itinerary.timeZone),
    };
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
 * What to say beside a service by plan: past ones, the one the car is in, and the next one with the time left until
 * its in-time. Null for those further on, and while the time is not known.
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
  if (now >= moment.outAt) return { kind: 'past', words: 'past' };
  if (now >= moment.inAt) return { kind: 'now', words: `now, out in ${spanInWords(moment.outAt - now)}` };
  const isNext = index === moments.findIndex((one) => now < one.outAt);
  return isNext ? { kind: 'next', words: `next, in ${spanInWords(moment.inAt - now)}` } : null;
}

/** Whole minutes, cut, so that nobody counts on a minute that is not there. */
function spanInWords(seconds: number): string {
  const minutes = Math.floor(seconds / SECONDS_IN_MINUTE);
  if (minutes < 2 * MINUTES_IN_HOUR) return `${minutes} min`;
  if (minutes < 2 * MINUTES_IN_DAY)
    return `${Math.floor(minutes / MINUTES_IN_HOUR)} h ${minutes % MINUTES_IN_HOUR} min`;
  return `${Math.floor(minutes / MINUTES_IN_DAY)} days`;
}
