import type { EventReplica } from '@halfshaft/contract';

const MILLIS_IN_SECOND = 1000;

/** The part of an event that tells its clock. */
export type EventClockSource = Pick<EventReplica, 'serverTime' | 'clockOffsetSeconds'>;

/**
 * The event's official clock minus this device's, in milliseconds. `receivedAt` is this device's clock, in
 * milliseconds since the epoch, at the moment the event came from the server: from then on only elapsed time counts,
 * so a phone whose clock is wrong still shows the event's time.
 *
 * @example
 * eventClockAhead({ serverTime: 60_000, clockOffsetSeconds: 2 }, 50_000) // 12_000
 */
export function eventClockAhead(source: EventClockSource, receivedAt: number): number {
  return source.serverTime + source.clockOffsetSeconds * MILLIS_IN_SECOND - receivedAt;
}

/** The event's official clock in whole seconds since the epoch, cut; `now` is this device's clock in milliseconds. */
export function eventSeconds(source: EventClockSource, receivedAt: number, now: number): number {
  return Math.floor((now + eventClockAhead(source, receivedAt)) / MILLIS_IN_SECOND);
}

/** A moment of the log, in milliseconds of the server's clock, on the event's official clock. */
export function secondsOf(
  millis: number,
  { clockOffsetSeconds }: Pick<EventReplica, 'clockOffsetSeconds'>,
): number {
  return Math.floor(millis / MILLIS_IN_SECOND) + clockOffsetSeconds;
}
