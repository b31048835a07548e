import { excerpt } from '../excerpt';
import type { ItineraryProblem } from '../model';
import { LIST_COLUMNS, LIST_HEADINGS, type ListColumn, listColumnOf } from './list-columns';
import type { ColumnPlaces } from './list-reader';

const NECESSARY: readonly ListColumn[] = ['car', 'outcome'];

/**
 * Which column stands where, from the row of headings. A heading that means nothing here is a problem and not passed
 * over: most often it is the names of people, which are not needed and so are not kept.
 */
export function readListHeadings(
  cells: readonly string[],
  row: number,
): { places: ColumnPlaces; problems: ItineraryProblem[] } {
  const places = new Map<ListColumn, number>();
  const problems: ItineraryProblem[] = [];
  const refuse = (column: number | null, code: string, message: string) =>
    problems.push({ row, column, field: null, code, message, severity: 'error' });
  for (const [index, cell] of cells.entries()) {
    const column = listColumnOf(cell);
    if (cell === '') continue;
    if (column === null) {
      const known = LIST_COLUMNS.map((one) => LIST_HEADINGS[one]).join(', ');
      refuse(
        index + 1,
        'column-unknown',
        `“${excerpt(cell)}” is no heading here. Take that column out, or name it one of: ${known}.`,
      );
    } else if (places.has(column)) {
      refuse(
        index + 1,
        'column-twice',
        `There are two columns for ${LIST_HEADINGS[column]}. Take one of them out.`,
      );
    } else places.set(column, index);
  }
  for (const column of NECESSARY.filter((one) => !places.has(one)))
    refuse(
      null,
      'column-missing',
      `The first row has no heading “${LIST_HEADINGS[column]}”. Add a row of headings that has it.`,
    );
  return { places, problems };
}
