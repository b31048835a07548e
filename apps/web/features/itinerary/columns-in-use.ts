import type { ReadTable } from '@halfshaft/itinerary';

/** Index of each column that has something in it or said of it: an empty one would only take the others' place. */
export function columnsInUse({ headings, rows }: ReadTable): number[] {
  return headings.flatMap((heading, index) => {
    const cells = rows.map((row) => row.cells[index]);
    const isUsed =
      heading.problems.length > 0 ||
      cells.some((cell) => cell !== undefined && (cell.text !== '' || cell.problems.length > 0));
    return isUsed ? [index] : [];
  });
}
