import type { ItineraryProblem, ReadTable } from '@halfshaft/itinerary';
import type { CellPlace } from './mend-cell';

/** How many problems stop the saving. */
export function leftToMend(problems: readonly ItineraryProblem[]): number {
  return problems.filter((problem) => problem.severity === 'error').length;
}

/** "3 left to mend, 1 remark", without what there is none of. */
export function leftInWords(problems: readonly ItineraryProblem[]): string {
  const errors = leftToMend(problems);
  const remarks = problems.length - errors;
  const parts = [
    errors > 0 ? `${errors} left to mend` : '',
    remarks > 0 ? `${remarks} ${remarks === 1 ? 'remark' : 'remarks'}` : '',
  ];
  return parts.filter((words) => words !== '').join(', ');
}

/** The cells that have something said of them, in reading order: those that are boxes. */
export function cellsToMend(table: ReadTable): CellPlace[] {
  const headings = columnsWithProblems(table.headings).map((column) => ({ rowIndex: null, column }));
  const cells = table.rows.flatMap((row, rowIndex) =>
    columnsWithProblems(row.cells).map((column) => ({ rowIndex, column })),
  );
  return [...headings, ...cells];
}

/**
 * Where the keyboard goes after a cell was written: it stays while the cell still stops the saving, else it goes to the
 * next cell with a problem, from the last to the first. Null when no cell has one.
 */
export function nextToMend(table: ReadTable, from: CellPlace): CellPlace | null {
  const places = cellsToMend(table);
  const stays = places.find((place) => isSame(place, from) && stopsSaving(table, place));
  return stays ?? places.find((place) => isAfter(place, from)) ?? places[0] ?? null;
}

function columnsWithProblems(cells: readonly { problems: readonly ItineraryProblem[] }[]): number[] {
  return cells.flatMap((cell, index) => (cell.problems.length > 0 ? [index + 1] : []));
}

function stopsSaving(table: ReadTable, { rowIndex, column }: CellPlace): boolean {
  const cells = rowIndex === null ? table.headings : table.rows[rowIndex]?.cells;
  return leftToMend(cells?.[column - 1]?.problems ?? []) > 0;
}

function isSame(one: CellPlace, other: CellPlace): boolean {
  return one.rowIndex === other.rowIndex && one.column === other.column;
}

function isAfter(one: CellPlace, other: CellPlace): boolean {
  const [row, otherRow] = [one.rowIndex ?? -1, other.rowIndex ?? -1];
  return row === otherRow ? one.column > other.column : row > otherRow;
}
