import type { ItineraryProblem } from '../model';
import { LIST_HEADINGS, type ListColumn } from './list-columns';

/** What one row is read with. */
export interface ListRow {
  /** 1-based, as the person sees it. */
  row: number;
  /** The cell's text; empty where the column or the cell is missing. */
  text: (column: ListColumn) => string;
  refuse: (column: ListColumn, code: string, message: string) => void;
}

/** Where each column of the list stands in the pasted text. */
export type ColumnPlaces = ReadonlyMap<ListColumn, number>;

/** The reader of one row; what is wrong in it goes to `problems`. */
export function listRow(
  cells: readonly string[],
  row: number,
  places: ColumnPlaces,
  problems: ItineraryProblem[],
): ListRow {
  const text = (column: ListColumn) => {
    const place = places.get(column);
    const cell = place === undefined ? '' : (cells[place] ?? '');
    return /^[-–—]$/.test(cell) ? '' : cell;
  };
  const refuse = (column: ListColumn, code: string, message: string) => {
    const place = places.get(column);
    const at = place === undefined ? null : place + 1;
    problems.push({ row, column: at, field: LIST_HEADINGS[column], code, message, severity: 'error' });
  };
  return { row, text, refuse };
}
