import type { EpochSeconds } from './model';

type Part = 'weekday' | 'day' | 'month' | 'year' | 'hour' | 'minute';

/** Made once for each zone: making one costs a thousand times what using it does. */
const formats = new Map<string, Intl.DateTimeFormat>();

/** With what every browser brings along: the calendar for reading itineraries is too heavy for a phone in the bay. */
function partsOf(instant: EpochSeconds, timeZone: string): Record<Part, string> {
  const format = formats.get(timeZone) ?? openFormat(timeZone);
  const parts = format.formatToParts(instant * 1000).map(({ type, value }) => [type, value]);
  return Object.fromEntries(parts);
}

function openFormat(timeZone: string): Intl.DateTimeFormat {
  const date = { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' } as const;
  const time = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const;
  const format = new Intl.DateTimeFormat('en-US', { timeZone, ...date, ...time });
  formats.set(timeZone, format);
  return format;
}

/**
 * The time of day in the event's zone, 24 hours, seconds cut. Throws when the zone is unknown.
 *
 * @example
 * formatClock(1781331180, 'Europe/Vienna') // '08:13'
 */
export function formatClock(instant: EpochSeconds, timeZone: string): string {
  const { hour, minute } = partsOf(instant, timeZone);
  return `${hour}:${minute}`;
}

/**
 * The day in the event's zone, for people. Throws when the zone is unknown.
 *
 * @example
 * formatDay(1781331180, 'Europe/Vienna') // 'Sat 13 Jun 2026'
 */
export function formatDay(instant: EpochSeconds, timeZone: string): string {
  const { weekday, day, month, year } = partsOf(instant, timeZone);
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
