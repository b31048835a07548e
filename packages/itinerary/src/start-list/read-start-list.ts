import type { ItineraryProblem } from '../model';
import { cutStartList, MAX_START_LIST_ROWS } from './cut-start-list';
import { readStarter } from './read-starter';
import type { ReadStartList, Starter } from './start-list';

/**
 * Reads a pasted start list: a row for each car with its number, its start position and, where it is another than
 * `section`, the section from which that holds. Cells are separated by tabs, semicolons, commas or spaces; a first row
 * without any figure is taken for the headings; empty rows are passed over.
 *
 * @example
 * readStartList('Car Pos\n14 9', 3).starters // [{ carNumber: '14', position: 9, section: 3 }]
 */
export function readStartList(text: string, section = 1): ReadStartList {
  const starters: (Starter & { row: number })[] = [];
  const problems: ItineraryProblem[] = [];
  const rows = cutStartList(text.replace(/^\uFEFF/, ''));
  const first = rows.findIndex(isWritten);
  for (const [index, cells] of rows.slice(0, MAX_START_LIST_ROWS).entries()) {
    if (!isWritten(cells) || (index === first && isHeading(cells))) continue;
    const row = index + 1;
    const read = readStarter(cells, row, section);
    const clash = Array.isArray(read) ? null : findClash(read, starters);
    if (Array.isArray(read)) problems.push(...read);
    else if (clash) problems.push({ ...clash, row, severity: 'error' });
    else starters.push({ ...read, row });
  }
  if (rows.length > MAX_START_LIST_ROWS) problems.push(whole('too-many-rows', TOO_LONG));
  if (starters.length + problems.length === 0) problems.push(whole('empty-list', EMPTY));
  return { starters: starters.map(({ row: _, ...starter }) => starter), problems };
}

const TOO_LONG = `The list has more than ${MAX_START_LIST_ROWS} rows. Paste the start list only.`;
const EMPTY = 'The list has no car. Paste a row for each: car number, start position.';

function whole(code: string, message: string): ItineraryProblem {
  return { row: null, column: null, field: null, code, message, severity: 'error' };
}

const isWritten = (cells: readonly string[]) => cells.some((cell) => cell !== '');
const isHeading = (cells: readonly string[]) => !cells.some((cell) => /\d/.test(cell));

/** In one section a car starts once, and a place is one car's. */
function findClash(
  { carNumber, position, section }: Starter,
  before: readonly (Starter & { row: number })[],
): Pick<ItineraryProblem, 'column' | 'field' | 'code' | 'message'> | null {
  const same = before.filter((other) => other.section === section);
  const car = same.find((other) => other.carNumber === carNumber);
  if (car) {
    const message = `Car ${carNumber} stands in row ${car.row} already. Take one of the two out.`;
    return { column: 1, field: 'Car number', code: 'car-twice', message };
  }
  const place = same.find((other) => other.position === position);
  if (!place) return null;
  const message = `Start position ${position} is that of car ${place.carNumber} in row ${place.row}. Mend one of the two.`;
  return { column: 2, field: 'Start position', code: 'position-twice', message };
}
