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
  return services.find((service) => !hasLeftService(service, times, now)) ?? services.at(-1) ?? null;
}

/** Whether a car is beyond a service: see `serviceNow`. */
export function hasLeftService(
  { inIndex, outIndex }: ServiceWindow,
  times: readonly PointTime[],
  now: EpochSeconds,
): boolean {
  if (hasReached(times, outIndex)) return true;
  const outAt = times[outIndex]?.at ?? Number.POSITIVE_INFINITY;
  return now > (hasReached(times, inIndex) ? outAt + OVERRUN_SECONDS : outAt);
}

/** Whether a time is written at a point or anywhere beyond it. */
export function hasReached(times: readonly PointTime[], pointIndex: number): boolean {
  return times.findLastIndex((time) => time.writtenAt !== null) >= pointIndex;
}
