import { Temporal } from 'temporal-polyfill';
import type { EpochSeconds } from './model';

/** A time of day as printed, with the offset from UTC where one is written (`02:30+01:00`). */
export interface WallClock {
  secondOfDay: number;
  offsetSeconds: number | null;
}

/** The instants a printed time may mean on one date, earliest first. */
export interface WallInstants {
  /** Two where the clocks go back over it, else one. */
  instants: EpochSeconds[];
  /** The clocks go forward over it: this time of day does not exist, and the instant is the one as long after the change. */
  skipped: boolean;
}

/** Whether `timeZone` is a zone this runtime knows. */
export function isTimeZone(timeZone: string): boolean {
  try {
    zoned(0, timeZone);
    return true;
  } catch {
    // Temporal offers no question for this, only the refusal.
    return false;
  }
}

/** Whether `date` is a day of the calendar written `YYYY-MM-DD`. */
export function isCalendarDate(date: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (!parts) return false;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  if (year < 1970 || month < 1 || month > 12 || day < 1) return false;
  return day <= Temporal.PlainYearMonth.from({ year, month }).daysInMonth;
}

/** The weekday of a date, from Monday 1 to Sunday 7. */
export function weekdayOfDate(date: string): number {
  return Temporal.PlainDate.from(date).dayOfWeek;
}

/** Whole days from one date to another, below 0 when it goes back. */
export function daysBetween(from: string, to: string): number {
  return Temporal.PlainDate.from(from).until(to, { largestUnit: 'days' }).days;
}

/** What a time of day on a date means in a zone. */
export function instantsOf(date: string, clock: WallClock, timeZone: string): WallInstants {
  const wall = Temporal.PlainDate.from(date).toPlainDateTime().add({ seconds: clock.secondOfDay });
  if (clock.offsetSeconds !== null) {
    return { instants: [seconds(wall.toZonedDateTime('UTC')) - clock.offsetSeconds], skipped: false };
  }
  const earlier = wall.toZonedDateTime(timeZone, { disambiguation: 'earlier' });
  const later = wall.toZonedDateTime(timeZone, { disambiguation: 'later' });
  if (seconds(earlier) === seconds(later)) return { instants: [seconds(later)], skipped: false };
  const skipped = !later.toPlainDateTime().equals(wall);
  return { instants: skipped ? [seconds(later)] : [seconds(earlier), seconds(later)], skipped };
}

/** The date of an instant in a zone, `YYYY-MM-DD`, moved on by whole days. */
export function dateOf(instant: EpochSeconds, timeZone: string, daysLater = 0): string {
  return zoned(instant, timeZone).toPlainDate().add({ days: daysLater }).toString();
}

/** The time of day of an instant as printed: `08:13`, `08:13:30` where seconds matter, with its offset where it comes twice. */
export function printedClock(instant: EpochSeconds, timeZone: string): string {
  const local = zoned(instant, timeZone);
  const clock = local.toPlainTime().toString({ smallestUnit: local.second === 0 ? 'minute' : 'second' });
  const wall = { secondOfDay: local.hour * 3600 + local.minute * 60 + local.second, offsetSeconds: null };
  const comesTwice = instantsOf(local.toPlainDate().toString(), wall, timeZone).instants.length > 1;
  return comesTwice ? clock + local.offset : clock;
}

/** An instant in a zone. Throws when the zone is unknown. */
export function zoned(instant: EpochSeconds, timeZone: string): Temporal.ZonedDateTime {
  return Temporal.Instant.fromEpochMilliseconds(instant * 1000).toZonedDateTimeISO(timeZone);
}

function seconds(instant: Temporal.ZonedDateTime): EpochSeconds {
  return Math.floor(instant.epochMilliseconds / 1000);
}
