import { excerpt } from './excerpt';
import type { TableHeader } from './find-header';
import type { ItineraryProblem } from './model';
import { type ItineraryProblemCode, WARNING_CODES } from './problem-code';
import type { ColumnKey } from './table-columns';
import type { TableReading } from './table-row';

export const KILOMETRES_TO_DO = 'Write kilometres as 16.65 or 16,65, without a thousands separator.';

/** What a row is read with. */
export interface RowReader {
  /** The cell's text, empty where the column or the cell is missing. */
  text: (key: ColumnKey) => string;
  /** The cell's value: null where it is empty or cannot be read, which is reported. */
  value: <T>(
    key: ColumnKey,
    read: (cell: string) => T | null,
    code: ItineraryProblemCode,
    toDo: string,
  ) => T | null;
  tell: (key: ColumnKey | null, code: ItineraryProblemCode, message: string) => void;
  unreadable: Set<ColumnKey>;
}

/** The reader of one row; what it cannot read goes to `problems`. */
export function createRowReader(
  cells: string[],
  row: number,
  header: TableHeader,
  placeOf: TableReading['placeOf'],
  problems: ItineraryProblem[],
): RowReader {
  const unreadable = new Set<ColumnKey>();
  const text = (key: ColumnKey) => {
    const position = header.columns.get(key);
    const cell = position === undefined ? '' : (cells[position] ?? '');
    return /^[-–—]$/.test(cell) ? '' : cell;
  };
  const tell = (key: ColumnKey | null, code: ItineraryProblemCode, message: string) => {
    const place = key === null ? { column: null, field: null } : placeOf(key);
    problems.push(tellAt(row, place.column, place.field, code, message));
  };
  const value: RowReader['value'] = (key, read, code, toDo) => {
    const cell = text(key);
    if (cell === '') return null;
    const result = read(cell);
    if (result === null) {
      unreadable.add(key);
      tell(key, code, `“${excerpt(cell)}” cannot be read as ${placeOf(key).field}. ${toDo}`);
    }
    return result;
  };
  return { text, value, tell, unreadable };
}

/** A problem at a cell. */
export function tellAt(
  row: number,
  column: number | null,
  field: string | null,
  code: ItineraryProblemCode,
  message: string,
): ItineraryProblem {
  return { row, column, field, code, message, severity: WARNING_CODES.has(code) ? 'warning' : 'error' };
}
