import { columnsOf } from '../pasted-list/list-shape';
import type { ControlPass } from './model';
import { TIME_SHAPE, type TimeColumn } from './time-columns';

const HOUR = 60;

/**
 * The list as rows of cells, headings first, for a file: what counts of each row, the time to the minute and the minutes
 * late. `readTimeList` reads it back.
 *
 * @example
 * timeListCells([])[0] // ['Car', 'Control', 'Time', 'Minutes late']
 */
export function timeListCells(passes: readonly ControlPass[]): string[][] {
  const columns = columnsOf(TIME_SHAPE).filter(
    (column): column is Exclude<TimeColumn, 'due'> => column !== 'due',
  );
  const cells = passes.map(({ carNumber, controlId, lateMinutes, atMinute }) => {
    const written = {
      car: carNumber,
      control: controlId,
      time: atMinute === null ? '' : clockOfDay(atMinute),
      late: String(lateMinutes),
    };
    return columns.map((column) => written[column]);
  });
  return [columns.map((column) => TIME_SHAPE.headings[column]), ...cells];
}

function clockOfDay(minute: number): string {
  const twoDigits = (amount: number) => String(amount).padStart(2, '0');
  return `${twoDigits(Math.floor(minute / HOUR))}:${twoDigits(minute % HOUR)}`;
}
