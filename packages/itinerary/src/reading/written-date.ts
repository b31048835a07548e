import { daysBetween, isCalendarDate, weekdayOfDate } from '../wall-clock';
import { foldWords } from './fold-words';

/** Month names and their short forms in English, German, French, Spanish and Italian, folded. */
const MONTHS: readonly string[] = [
  'january jan januar janner janvier janv enero ene gennaio gen',
  'february feb februar feber fevrier fev febrero febbraio',
  'march mar marz mars marzo mrz',
  'april apr avril avr abril abr aprile',
  'may mai mayo maggio mag',
  'june jun juni juin junio giugno giu',
  'july jul juli juillet juil julio luglio lug',
  'august aug aout agosto ago',
  'september sep sept septembre septiembre settembre set',
  'october oct oktober okt octobre octubre ottobre ott',
  'november nov novembre noviembre',
  'december dec dezember dez decembre diciembre dic dicembre',
];
/** Monday first. */
const WEEKDAYS: readonly string[] = [
  'monday mon montag mo lundi lun lunes lunedi',
  'tuesday tue tues dienstag di mardi mar martes martedi',
  'wednesday wed mittwoch mi mercredi mer miercoles mie mercoledi',
  'thursday thu thur thurs donnerstag do jeudi jeu jueves jue giovedi gio',
  'friday fri freitag fr vendredi ven viernes vie venerdi',
  'saturday sat samstag sonnabend sa samedi sam sabado sab sabato',
  'sunday sun sonntag so dimanche dim domingo dom domenica',
];
const numberOf = (names: readonly string[]): ReadonlyMap<string, number> =>
  new Map(names.flatMap((all, index) => all.split(' ').map((name) => [name, index + 1] as const)));
const MONTH_NUMBER = numberOf(MONTHS);
const WEEKDAY_NUMBER = numberOf(WEEKDAYS);

/** A longer line is a paragraph, whatever it holds. */
const LONGEST_LINE = 300;
const ENGLISH_WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

export interface WrittenDate {
  /** `YYYY-MM-DD` */
  date: string;
  /** The weekday that the date has, in English, where another one is written beside it. */
  otherWeekday: string | null;
  hasWeekday: boolean;
  /** The line without the date and its weekday, folded. */
  rest: string;
}

interface Found {
  /** All readings, the likeliest first; each `YYYY-MM-DD` or no date at all. */
  dates: string[];
  before: string;
  after: string;
}

/**
 * The date a line names, in figures or in words; null when it names none, `malformed` when it names one that is not in
 * the calendar. A year that is not written is the one that brings the date nearest to `near`. Of the two readings of
 * `5/6/2026` the one with the weekday beside it is taken, else day first.
 *
 * @example
 * writtenDate('Fr. 12.06.', '2026-06-12') // { date: '2026-06-12', otherWeekday: null, hasWeekday: true, rest: '' }
 */
export function writtenDate(line: string, near: string): WrittenDate | null | 'malformed' {
  if (line.length > LONGEST_LINE) return null;
  const found = inFigures(line, near) ?? inWords(line, near);
  if (!found) return null;
  const dates = found.dates.filter(isCalendarDate);
  const first = dates[0];
  if (first === undefined) return 'malformed';
  const before = foldWords(found.before).split(' ');
  const weekday = WEEKDAY_NUMBER.get(before.at(-1) ?? '');
  const date = dates.find((one) => weekdayOfDate(one) === weekday) ?? first;
  if (weekday !== undefined) before.pop();
  const isOther = weekday !== undefined && weekdayOfDate(date) !== weekday;
  return {
    date,
    otherWeekday: isOther ? (ENGLISH_WEEKDAYS[weekdayOfDate(date) - 1] ?? null) : null,
    hasWeekday: weekday !== undefined,
    rest: foldWords(`${before.join(' ')} ${found.after}`),
  };
}

function inFigures(line: string, near: string): Found | null {
  const iso = /(?<!\d)(\d{4}-\d{2}-\d{2})(?!\d)/.exec(line);
  if (iso?.[1]) return { dates: [iso[1]], ...around(line, iso) };
  const dots = /(?<!\d)(\d{1,2})\. ?(\d{1,2})\.(?: ?(\d{4}|\d{2})(?!\d))?/.exec(line);
  if (dots) return { dates: [dateOf(dots[3], dots[2], dots[1], near)], ...around(line, dots) };
  const strokes = /(?<!\d)(\d{1,2})[/-](\d{1,2})(?:[/-](\d{4}|\d{2}))(?!\d)/.exec(line);
  if (!strokes) return null;
  const [, one, other, year] = strokes;
  return {
    dates: [dateOf(year, other, one, near), dateOf(year, one, other, near)],
    ...around(line, strokes),
  };
}

const DAY_FIRST =
  /(?<![\d:])(\d{1,2})(?:st|nd|rd|th|er|\.|º)?,? (?:of |de |di )?(\p{L}+)\.?(?:,? (?:de |di )?(\d{4})(?!\d))?/giu;
const MONTH_FIRST = /(\p{L}+)\.? (\d{1,2})(?:st|nd|rd|th)?(?![\d:.])(?:,? (\d{4})(?!\d))?/giu;

function inWords(line: string, near: string): Found | null {
  for (const match of line.matchAll(DAY_FIRST)) {
    const month = MONTH_NUMBER.get(foldWords(match[2] ?? ''));
    if (month) return { dates: [dateOf(match[3], String(month), match[1], near)], ...around(line, match) };
  }
  for (const match of line.matchAll(MONTH_FIRST)) {
    const month = MONTH_NUMBER.get(foldWords(match[1] ?? ''));
    if (month) return { dates: [dateOf(match[3], String(month), match[2], near)], ...around(line, match) };
  }
  return null;
}

function around(line: string, match: RegExpExecArray): { before: string; after: string } {
  return { before: line.slice(0, match.index), after: line.slice(match.index + match[0].length) };
}

function dateOf(year: string | undefined, month = '', day = '', near = ''): string {
  const monthAndDay = `${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  if (year !== undefined) return `${year.length === 2 ? '20' : ''}${year}-${monthAndDay}`;
  const nearYear = Number(near.slice(0, 4));
  const dates = [nearYear, nearYear + 1, nearYear - 1].map((one) => `${one}-${monthAndDay}`);
  const inCalendar = dates.filter(isCalendarDate);
  inCalendar.sort((one, other) => Math.abs(daysBetween(near, one)) - Math.abs(daysBetween(near, other)));
  return inCalendar[0] ?? dates[0] ?? '';
}
