import type { ItineraryProblem } from '../model';
import { delimiterOf } from '../start-list/cut-start-list';
import { splitCells } from '../table-cells';
import { type ListRow, listRow } from './list-row';
import type { ListShape } from './list-shape';
import { readListHeadings } from './read-list-headings';

/** What was read of one row, and the row it stands in. */
export interface Placed<Item> {
  row: number;
  record: Item;
}

export interface ReadPastedList<Item> {
  placed: Placed<Item>[];
  /** By row and column of the pasted text, both from 1. */
  problems: ItineraryProblem[];
}

/**
 * Reads a list out of pasted text or a CSV file: a row of headings in plain words, then a row for each thing. Cells are
 * separated by tabs, semicolons or commas; empty rows are passed over.
 *
 * @param readRow what a row says; null when something in it cannot be read, which it tells by `refuse`
 */
export function readPastedList<Column extends string, Item>(
  text: string,
  shape: ListShape<Column>,
  readRow: (row: ListRow<Column>) => Item | null,
): ReadPastedList<Item> {
  const { mostRows, emptySays, headings } = shape;
  const { rows, openQuoteRow } = splitCells(text, delimiterOf(text) ?? '\t', mostRows + 2);
  const first = rows.findIndex(isWritten);
  const head = rows[first];
  if (!head) return { placed: [], problems: [whole('empty-list', emptySays)] };
  const { places, problems } = readListHeadings(shape, head, first + 1);
  if (openQuoteRow !== null)
    problems.push(
      whole(
        'open-quote',
        `A quotation mark in row ${openQuoteRow + 1} has no other end. Take it out or add one.`,
      ),
    );
  // Without the headings every row would be told as wrong.
  if (problems.length > 0) return { placed: [], problems };
  const placed: Placed<Item>[] = [];
  for (const [index, cells] of rows.slice(0, first + 1 + mostRows).entries()) {
    if (index <= first || !isWritten(cells)) continue;
    const record = readRow(listRow(cells, index + 1, { headings, places, problems }));
    if (record !== null) placed.push({ row: index + 1, record });
  }
  if (rows.length > first + 1 + mostRows)
    problems.push(whole('too-many-rows', `The list has more than ${mostRows} rows. Paste one event only.`));
  if (placed.length + problems.length === 0) problems.push(whole('empty-list', emptySays));
  return { placed, problems };
}

function whole(code: string, message: string): ItineraryProblem {
  return { row: null, column: null, field: null, code, message, severity: 'error' };
}

const isWritten = (cells: readonly string[]) => cells.some((cell) => cell !== '');
