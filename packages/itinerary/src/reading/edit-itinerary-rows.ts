import type { ReadTable } from './read-itinerary-model';
import { readTableToText } from './read-table-to-text';

export interface RowEdit {
  /** 0-based: where the row then stands; from 0 to the number of rows, the last only for a new row at the end. */
  rowIndex: number;
  /** By column; those left away are empty. */
  cells: readonly string[];
  /** Whether it takes the place of the row that stands there, or comes before it. */
  instead: boolean;
}

/**
 * The text of a table as read with one row more, or one row written anew, to be read again. Blanks and line breaks inside a
 * cell become one space.
 *
 * Throws when there is no such place, or more cells than columns.
 *
 * @example
 * putItineraryRow(table, { rowIndex: 3, cells: ['TC2', 'Hollow', '', '14.80', '', '0:34'], instead: false })
 */
export function putItineraryRow(table: ReadTable, { rowIndex, cells, instead }: RowEdit): string {
  requirePlace('putItineraryRow', table, rowIndex, instead ? -1 : 0);
  if (cells.length > table.headings.length) {
    throw new RangeError(
      `putItineraryRow: ${cells.length} cells do not fit in ${table.headings.length} columns`,
    );
  }
  const row = {
    sourceRow: 0,
    problems: [],
    cells: table.headings.map((_, index) => ({
      text: (cells[index] ?? '').replace(/\s+/gu, ' ').trim(),
      problems: [],
    })),
  };
  return readTableToText({ ...table, rows: table.rows.toSpliced(rowIndex, instead ? 1 : 0, row) });
}

/**
 * The text of a table as read without one of its rows. Throws when there is no such row.
 *
 * @example
 * dropItineraryRow(table, 3)
 */
export function dropItineraryRow(table: ReadTable, rowIndex: number): string {
  requirePlace('dropItineraryRow', table, rowIndex, -1);
  return readTableToText({ ...table, rows: table.rows.toSpliced(rowIndex, 1) });
}

function requirePlace(name: string, { rows }: ReadTable, rowIndex: number, beyond: number): void {
  const last = rows.length + beyond;
  if (Number.isSafeInteger(rowIndex) && rowIndex >= 0 && rowIndex <= last) return;
  throw new RangeError(`${name}: there is no place ${rowIndex} in a table of ${rows.length} rows`);
}
