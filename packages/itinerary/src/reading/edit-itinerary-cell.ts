import { requireOptions } from '../require-options';
import { headingMeaning } from './heading-meaning';
import { readCutTable } from './read-cut-table';
import type { CutTable, ItineraryRead, ReadItineraryOptions, ReadTable } from './read-itinerary-model';

export interface CellEdit {
  /** `sourceRow` of the row, or null for the headings. */
  sourceRow: number | null;
  /** 1-based. */
  column: number;
  text: string;
}

/**
 * Writes one cell, or one heading, of a table as read and reads it again. The table given stays as it is. A row whose
 * cells are all cleared is no row any more. A blank heading that was understood by its cells keeps its meaning until a
 * word is written in it.
 *
 * Throws when there is no such cell.
 *
 * @example
 * editItineraryCell(read.table, { sourceRow: 5, column: 3, text: '8.10' }, options).parsed.ok // true
 */
export function editItineraryCell(
  table: ReadTable,
  edit: CellEdit,
  options: ReadItineraryOptions,
): ItineraryRead {
  requireOptions('editItineraryCell', options);
  const cut = cutOf(table);
  const text = edit.text.replace(/\s+/gu, ' ').trim();
  const index = edit.column - 1;
  const heading = cut.headings[index];
  const row = edit.sourceRow === null ? null : cut.rows.find((one) => one.sourceRow === edit.sourceRow);
  if (!heading || row === undefined) {
    throw new RangeError(
      `editItineraryCell: there is no column ${edit.column}${edit.sourceRow === null ? '' : ` in row ${edit.sourceRow}`} of this table`,
    );
  }
  if (row) {
    row.cells[index] = text;
    cut.problems = cut.problems.filter((problem) => problem.row !== row.sourceRow);
  } else {
    const { key, unit } = headingMeaning(text);
    cut.headings[index] = { text, meaning: key, unit };
  }
  return readCutTable(cut, options);
}

/** Found while the text was cut into cells, so reading the cells again does not find them again. */
const TOLD_WHEN_CUT: ReadonlySet<string> = new Set(['headings-assumed', 'figure-missing']);

/** The table before it was read, without shared parts. */
function cutOf(table: ReadTable): CutTable {
  return {
    shape: table.shape,
    headingRow: table.headingRow,
    headings: table.headings.map(({ text, meaning, unit }) => ({ text, meaning, unit })),
    rows: table.rows.map(({ sourceRow, cells }) => ({ sourceRow, cells: cells.map((cell) => cell.text) })),
    leftOut: table.leftOut,
    problems: [
      ...table.problems,
      ...table.rows.flatMap((row) => row.cells.flatMap((cell) => cell.problems)),
    ].filter((problem) => TOLD_WHEN_CUT.has(problem.code)),
  };
}
