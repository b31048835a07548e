const SECONDS_IN_DAY = 86_400;
const DAYS_IN_400_YEARS = 146_097;
/** From 1 March of the year 0, where a 400-year cycle of the calendar begins, to 1 January 1970. */
const DAYS_TO_1970 = 719_468;

/**
 * An instant as a day, with the time of day (UTC) only where it is not midnight.
 *
 * @example
 * writeDate(1_806_451_200) // '2027-03-31'
 */
export function writeDate(epochSeconds: number): string {
  const days = Math.floor(epochSeconds / SECONDS_IN_DAY);
  const second = epochSeconds - days * SECONDS_IN_DAY;
  const { year, month, day } = dayOf(days);
  const date = `${figures(year, 4)}-${figures(month, 2)}-${figures(day, 2)}`;
  if (second === 0) return date;
  const parts = [Math.floor(second / 3600), Math.floor(second / 60) % 60, second % 60];
  return `${date} ${parts.map((part) => figures(part, 2)).join(':')}`;
}

const WRITTEN_DATE =
  /^(?:(?<y>\d{4})-(?<m>\d{1,2})-(?<d>\d{1,2})|(?<d2>\d{1,2})\.(?<m2>\d{1,2})\.(?<y2>\d{4}))(?:[ T](?<h>\d{1,2}):(?<min>\d{2})(?::(?<s>\d{2}))?)?$/;

/**
 * A day written 2027-03-31 or 31.03.2027, with or without a time of day, as seconds since 1970 (UTC). Null for anything
 * else: with slashes nobody knows whether the day or the month stands first.
 *
 * @example
 * readDate('31.03.2027') // 1_806_451_200
 */
export function readDate(text: string): number | null {
  const groups = WRITTEN_DATE.exec(text.trim())?.groups;
  if (!groups) return null;
  const { y, m, d, y2, m2, d2, h = '0', min = '0', s = '0' } = groups;
  const written = { year: Number(y ?? y2), month: Number(m ?? m2), day: Number(d ?? d2) };
  const [hour, minute, second] = [Number(h), Number(min), Number(s)];
  if (written.month < 1 || written.month > 12 || hour > 23 || minute > 59 || second > 59) return null;
  const days = daysTo(written);
  const real = dayOf(days);
  // A day no calendar has comes back as one of the next month.
  if (real.month !== written.month || real.day !== written.day) return null;
  return days * SECONDS_IN_DAY + hour * 3600 + minute * 60 + second;
}

interface CalendarDay {
  year: number;
  month: number;
  day: number;
}

/**
 * Days since 1970 of a day of the calendar. Counted in years that begin in March, so that the leap day comes last:
 * months then are 153 days in each five (the usual reckoning of Julian day numbers).
 */
function daysTo({ year, month, day }: CalendarDay): number {
  const marchYear = month > 2 ? year : year - 1;
  const cycle = Math.floor(marchYear / 400);
  const yearOfCycle = marchYear - cycle * 400;
  const monthFromMarch = (month + 9) % 12;
  const dayOfYear = Math.floor((153 * monthFromMarch + 2) / 5) + day - 1;
  const leapDays = Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100);
  return cycle * DAYS_IN_400_YEARS + yearOfCycle * 365 + leapDays + dayOfYear - DAYS_TO_1970;
}

/** The day of the calendar so many days after 1 January 1970. */
function dayOf(days: number): CalendarDay {
  const shifted = days + DAYS_TO_1970;
  const cycle = Math.floor(shifted / DAYS_IN_400_YEARS);
  const dayOfCycle = shifted - cycle * DAYS_IN_400_YEARS;
  const leapDays =
    Math.floor(dayOfCycle / 1460) - Math.floor(dayOfCycle / 36_524) + Math.floor(dayOfCycle / 146_096);
  const yearOfCycle = Math.floor((dayOfCycle - leapDays) / 365);
  const before = yearOfCycle * 365 + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100);
  const monthFromMarch = Math.floor((5 * (dayOfCycle - before) + 2) / 153);
  const day = dayOfCycle - before - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = ((monthFromMarch + 2) % 12) + 1;
  return { year: cycle * 400 + yearOfCycle + (month <= 2 ? 1 : 0), month, day };
}

function figures(value: number, count: number): string {
  return String(value).padStart(count, '0');
}
