import { excerpt } from '../excerpt';
import type { ItineraryProblem } from '../model';
import type { ColumnPlaces } from './list-row';
import { columnsOf, type ListShape, listColumnOf } from './list-shape';

/**
 * Which column stands where, from the row of headings. A heading that means nothing here is a problem and not passed
 * over: most often it is the names of people, which are not needed and so are not kept.
 */
export function readListHeadings<Column extends string>(
  shape: ListShape<Column>,
  cells: readonly string[],
  row: number,
): { places: ColumnPlaces<Column>; problems: ItineraryProblem[] } {
  const { headings, necessary } = shape;
  const places = new Map<Column, number>();
  const problems: ItineraryProblem[] = [];
  const refuse = (column: number | null, code: string, message: string) =>
    problems.push({ row, column, field: null, code, message, severity: 'error' });
  for (const [index, cell] of cells.entries()) {
    const column = listColumnOf(shape, cell);
    if (cell === '') continue;
    if (column === null) {
      const known = columnsOf(shape)
        .map((one) => headings[one])
        .join(', ');
      refuse(
        index + 1,
        'column-unknown',
        `“${excerpt(cell)}” is no heading here. Take that column out, or name it one of: ${known}.`,
      );
    } else if (places.has(column)) {
      refuse(
        index + 1,
        'column-twice',
        `There are two columns for ${headings[column]}. Take one of them out.`,
      );
    } else places.set(column, index);
  }
  for (const column of necessary.filter((one) => !places.has(one)))
    refuse(
      null,
      'column-missing',
      `The first row has no heading “${headings[column]}”. Add a row of headings that has it.`,
    );
  return { places, problems };
}
