import { excerpt } from './excerpt';
import type { ItineraryProblem } from './model';
import type { ItineraryProblemCode } from './problem-code';
import { splitCells } from './table-cells';
import { COLUMN_HEADINGS, type ColumnKey, columnOf, NECESSARY_COLUMNS } from './table-columns';

/** Where each column stands. */
export interface TableHeader {
  delimiter: string;
  /** 0-based row of the headings. */
  row: number;
  headings: string[];
  /** 0-based position of each column that is there. */
  columns: ReadonlyMap<ColumnKey, number>;
  problems: ItineraryProblem[];
}

const DELIMITERS = ['\t', ';', ','];
const MAX_COLUMNS = 60;
/** Blank rows above the headings are passed over, this many at most. */
const HEADER_SEARCH_ROWS = 50;
/** Fewer headings than this are taken for a table without headings. */
const HEADINGS_TO_BELIEVE = 2;

/**
 * Finds the headings in the first row that is not empty, and with them the delimiter: the one of tab, semicolon and
 * comma that gives the most known headings. Null when no row holds headings.
 */
export function findHeader(text: string): TableHeader | null {
  const found = DELIMITERS.flatMap((delimiter) => {
    const { rows } = splitCells(text, delimiter, HEADER_SEARCH_ROWS);
    const row = rows.findIndex((cells) => cells.some((cell) => cell !== ''));
    const headings = rows[row];
    return headings
      ? [{ delimiter, row, headings, known: headings.filter((one) => columnOf(one) !== null).length }]
      : [];
  });
  found.sort((one, other) => other.known - one.known);
  const best = found[0];
  if (!best || best.known < HEADINGS_TO_BELIEVE) return null;
  const { columns, problems } = placeColumns(best.headings.slice(0, MAX_COLUMNS), best.row + 1);
  if (best.headings.length > MAX_COLUMNS) {
    const message = `Row ${best.row + 1} has more than ${MAX_COLUMNS} headings. Paste the itinerary table only.`;
    problems.push({
      row: best.row + 1,
      column: MAX_COLUMNS + 1,
      field: null,
      code: 'too-many-cells',
      message,
      severity: 'error',
    });
  }
  return { delimiter: best.delimiter, row: best.row, headings: best.headings, columns, problems };
}

function placeColumns(headings: string[], row: number) {
  const columns = new Map<ColumnKey, number>();
  const problems: ItineraryProblem[] = [];
  const tell = (
    column: number | null,
    field: string,
    code: ItineraryProblemCode,
    message: string,
    severity: 'error' | 'warning' = 'error',
  ) => problems.push({ row, column, field, code, message, severity });
  headings.forEach((heading, position) => {
    const key = columnOf(heading);
    const column = position + 1;
    const before = key === null ? undefined : columns.get(key);
    if (key === null) {
      if (heading === '') return;
      const known = Object.values(COLUMN_HEADINGS).join(', ');
      tell(
        column,
        heading,
        'column-unknown',
        `The column “${excerpt(heading)}” is not read. If it matters, give it one of these headings: ${known}.`,
        'warning',
      );
    } else if (before !== undefined) {
      tell(
        column,
        heading,
        'column-twice',
        `“${excerpt(heading)}” means the same as column ${before + 1} (“${excerpt(headings[before] ?? '')}”). Delete one of the two columns.`,
      );
    } else columns.set(key, position);
  });
  for (const key of NECESSARY_COLUMNS) {
    const heading = COLUMN_HEADINGS[key];
    if (!columns.has(key)) {
      tell(
        null,
        heading,
        'column-missing',
        `The column “${excerpt(heading)}” is missing. Add it, with this heading in row ${row}.`,
      );
    }
  }
  return { columns, problems };
}
