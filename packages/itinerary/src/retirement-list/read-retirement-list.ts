import type { Itinerary, ItineraryProblem } from '../model';
import { delimiterOf } from '../start-list/cut-start-list';
import { splitCells } from '../table-cells';
import { checkOrder, type PlacedRecord } from './check-order';
import { listRow } from './list-reader';
import type { ReadRetirementList } from './model';
import { readCarRecord } from './read-car-record';
import { readListHeadings } from './read-list-headings';

/** More rows than any event has starters and restarts; the rest would be a slip of the clipboard. */
export const MAX_RETIREMENT_ROWS = 1000;

/**
 * Reads a pasted list of who started, who stopped, where and why: a row of headings in plain words, then a row for each
 * car, and one more below it for each time the car came back. Cells are separated by tabs, semicolons or commas; empty
 * rows are passed over. Stages and controls are those of the itinerary.
 *
 * @example
 * readRetirementList('Car,What happened,Where,Cause\n7,out,in SS5,off road', itinerary).records[0]?.outcome // 'out'
 */
export function readRetirementList(text: string, itinerary: Itinerary): ReadRetirementList {
  const { rows, openQuoteRow } = splitCells(text, delimiterOf(text) ?? '\t', MAX_RETIREMENT_ROWS + 2);
  const first = rows.findIndex(isWritten);
  const headings = rows[first];
  if (!headings) return { records: [], problems: [whole('empty-list', EMPTY)] };
  const { places, problems } = readListHeadings(headings, first + 1);
  if (openQuoteRow !== null)
    problems.push(
      whole(
        'open-quote',
        `A quotation mark in row ${openQuoteRow + 1} has no other end. Take it out or add one.`,
      ),
    );
  // Without the headings every row would be told as wrong.
  if (problems.length > 0) return { records: [], problems };
  const placed: PlacedRecord[] = [];
  for (const [index, cells] of rows.slice(0, first + 1 + MAX_RETIREMENT_ROWS).entries()) {
    if (index <= first || !isWritten(cells)) continue;
    const record = readCarRecord(listRow(cells, index + 1, places, problems), itinerary);
    if (record) placed.push({ row: index + 1, record });
  }
  if (rows.length > first + 1 + MAX_RETIREMENT_ROWS) problems.push(whole('too-many-rows', TOO_LONG));
  if (placed.length + problems.length === 0) problems.push(whole('empty-list', EMPTY));
  // A row that could not be read may be the one that another seems to lack.
  if (problems.length === 0) problems.push(...checkOrder(placed, itinerary));
  return { records: placed.map(({ record }) => record), problems };
}

const TOO_LONG = `The list has more than ${MAX_RETIREMENT_ROWS} rows. Paste one event only.`;
const EMPTY = 'The list has no car. Paste a row of headings, then a row for each car that started.';

function whole(code: string, message: string): ItineraryProblem {
  return { row: null, column: null, field: null, code, message, severity: 'error' };
}

const isWritten = (cells: readonly string[]) => cells.some((cell) => cell !== '');
