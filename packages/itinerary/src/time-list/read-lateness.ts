import { excerpt } from '../excerpt';
import type { ListRow } from '../pasted-list/list-row';
import { readWallClock } from '../read-values';
import type { ControlPass } from './model';
import type { TimeColumn } from './time-columns';

type Lateness = Pick<ControlPass, 'lateMinutes' | 'atMinute'>;

const MINUTE = 60;
const MINUTES_IN_DAY = 1440;

/**
 * How late a row says a car was, from its two clocks, from its minutes, or from both when they agree; null when it cannot
 * be read, which is told. Seconds are cut from both clocks, as controls keep whole minutes (Motorsport UK National
 * Competition Rules 2026, chapter 13). Clocks carry no date: the time is taken for the one within twelve hours of the due one.
 */
export function readLateness(row: ListRow<TimeColumn>): Lateness | null {
  const due = clockIn(row, 'due');
  const atMinute = clockIn(row, 'time');
  const said = minutesIn(row);
  if (due === undefined || atMinute === undefined || said === undefined) return null;
  const reckoned = due === null || atMinute === null ? null : minutesBetween(due, atMinute);
  if (said === null && reckoned === null) return refuseMissing(row, due, atMinute);
  if (said !== null && reckoned !== null && said !== reckoned) {
    row.refuse(
      'late',
      'late-disagrees',
      `Row ${row.row} says ${said} minutes late, but its two times are ${reckoned} apart. Mend one of them.`,
    );
    return null;
  }
  return { lateMinutes: said ?? reckoned ?? 0, atMinute };
}

function refuseMissing(
  { row, text, refuse }: ListRow<TimeColumn>,
  due: number | null,
  at: number | null,
): null {
  const car = `car ${excerpt(text('car'))}`;
  if (at !== null)
    refuse(
      'due',
      'due-missing',
      `Row ${row} does not say when ${car} was due. Add the due time, or the minutes late.`,
    );
  else if (due !== null)
    refuse(
      'time',
      'time-missing',
      `Row ${row} has a due time but not when ${car} came. Add its time, or take the row out.`,
    );
  else
    refuse(
      'late',
      'late-missing',
      `Row ${row} has no time. Write when ${car} was due and when it came, or the minutes late.`,
    );
  return null;
}

/** The whole minute of the day; `undefined` when it cannot be read. */
function clockIn(
  { row, text, refuse }: ListRow<TimeColumn>,
  column: 'due' | 'time',
): number | null | undefined {
  const cell = text(column);
  if (cell === '') return null;
  const clock = readWallClock(cell);
  if (clock && clock.offsetSeconds === null) return Math.floor(clock.secondOfDay / MINUTE);
  refuse(
    column,
    `${column}-malformed`,
    `“${excerpt(cell)}” in row ${row} is no time of day. Write it as 14:05.`,
  );
  return undefined;
}

/** `undefined` when it cannot be read. */
function minutesIn({ row, text, refuse }: ListRow<TimeColumn>): number | null | undefined {
  const cell = text('late');
  if (cell === '') return null;
  const [, sign, digits] = /^([-−+])?(\d{1,3})(?: ?min)?$/i.exec(cell) ?? [];
  if (digits !== undefined) {
    const minutes = Number(digits);
    return sign === undefined || sign === '+' || minutes === 0 ? minutes : -minutes;
  }
  refuse(
    'late',
    'late-malformed',
    `“${excerpt(cell)}” in row ${row} is no number of minutes. Write a whole one: 3 for late, -1 for early, 0 for neither.`,
  );
  return undefined;
}

function minutesBetween(due: number, at: number): number {
  const apart = (at - due + MINUTES_IN_DAY) % MINUTES_IN_DAY;
  return apart > MINUTES_IN_DAY / 2 ? apart - MINUTES_IN_DAY : apart;
}
