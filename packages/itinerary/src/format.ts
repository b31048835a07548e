import { localParts } from './local-parts';
import type { EpochSeconds } from './model';

/**
 * The time of day in the event's zone, 24 hours, seconds cut. Throws when the zone is unknown.
 *
 * @example
 * formatClock(1781331180, 'Europe/Vienna') // '08:13'
 */
export function formatClock(instant: EpochSeconds, timeZone: string): string {
  const { hour, minute } = localParts(instant, timeZone);
  return `${hour}:${minute}`;
}

/**
 * The day in the event's zone, for people. Throws when the zone is unknown.
 *
 * @example
 * formatDay(1781331180, 'Europe/Vienna') // 'Sat 13 Jun 2026'
 */
export function formatDay(instant: EpochSeconds, timeZone: string): string {
  const { weekday, day, month, year } = localParts(instant, timeZone);
  return `${weekday} ${day} ${month} ${year}`;
}

/**
 * Metres as kilometres with two decimals, as itineraries print them, rounded to the nearest 10 m.
 *
 * @example
 * formatKilometres(12_340) // '12.34'
 */
export function formatKilometres(metres: number): string {
  if (!Number.isFinite(metres)) throw new RangeError(`formatKilometres: ${metres} is no distance`);
  return (Math.round(metres / 10) / 100).toFixed(2);
}
