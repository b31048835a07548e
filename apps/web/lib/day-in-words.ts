import { formatDay } from '@halfshaft/itinerary';

const MILLIS_IN_SECOND = 1000;

/**
 * A calendar day for people. Throws when it is none.
 *
 * @example
 * dayInWords('2026-06-13') // 'Sat 13 Jun 2026'
 */
export function dayInWords(day: string): string {
  return formatDay(Date.parse(`${day}T00:00:00Z`) / MILLIS_IN_SECOND, 'UTC');
}
