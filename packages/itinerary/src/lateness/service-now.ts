import type { EpochSeconds, ServiceWindow } from '../model';
import type { PointTime } from './times-along';

/** So long after it is due out a car nobody wrote out still counts as in service (common practice, no source). */
const OVERRUN_SECONDS = 30 * 60;

/**
 * The service a car is in or comes to next; after the last one, the last. Null when the event has none.
 *
 * What was written decides: a car written out, or written anywhere beyond, has left; one written in and not out is
 * still there, also when it overruns. Where nothing is written, the times it is due at stand in.
 *
 * @example
 * serviceNow(servicesOf(itinerary), timesAlong(question), now)?.id // 'B'
 */
export function serviceNow(
  services: readonly ServiceWindow[],
  times: readonly PointTime[],
  now: EpochSeconds,
): ServiceWindow | null {
  const reached = times.findLastIndex((time) => time.writtenAt !== null);
  const hasLeft = ({ inIndex, outIndex }: ServiceWindow) => {
    if (reached >= outIndex) return true;
    const outAt = times[outIndex]?.at ?? Number.POSITIVE_INFINITY;
    return now > (reached >= inIndex ? outAt + OVERRUN_SECONDS : outAt);
  };
  return services.find((service) => !hasLeft(service)) ?? services.at(-1) ?? null;
}
