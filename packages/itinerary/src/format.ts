import type { EpochSeconds } from './model';
import { zoned } from './wall-clock';

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/**
 * The time of day in the event's zone, 24 hours, seconds cut. Throws when the zone is unknown.
 *
 * @example
 * formatClock(1781331180, 'Europe/Vienna') // '08:13'
 */
export function formatClock(instant: EpochSeconds, timeZone: string): string {
  return zoned(instant, timeZone).toPlainTime().toString({ smallestUnit: 'minute' });
}

/**
 * The day in the event's zone, for people. Throws when the zone is unknown.
 *
 * @example
 * formatDay(1781331180, 'Europe/Vienna') // 'Sat 13 Jun 2026'
 */
export function formatDay(instant: EpochSeconds, timeZone: string): string {
  const local = zoned(instant, timeZone);
  return `${WEEKDAYS[local.dayOfWeek - 1]} ${local.day} ${MONTHS[local.month - 1]} ${local.year}`;
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
