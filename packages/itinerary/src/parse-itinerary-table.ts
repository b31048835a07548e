import type { ItineraryTableOptions } from './assemble-draft';
import { findHeader } from './find-header';
import { interpretReading } from './interpret-reading';
import { MAX_TABLE_ROWS, MAX_TEXT_CHARACTERS } from './limits';
import { type ParsedItinerary, refusal } from './parsed-itinerary';
import { readTable } from './read-table';
import { requireOptions } from './require-options';
import { splitCells } from './table-cells';
import { COLUMN_HEADINGS, NECESSARY_COLUMNS } from './table-columns';

/**
 * Reads a pasted itinerary: comma, semicolon or tab separated, headings in the first row, one control or stage a
 * row, `Leg 2, 2026-06-13` rows between legs, sums checked and left out.
 *
 * Either there is an itinerary, and at most warnings; or there is none, and every problem with its row and column as
 * the person sees them. Nothing is half applied. Metres and seconds are whole; times of day are resolved in the
 * event's zone once and for all. The columns are those itineraries are published with.
 *
 * Throws when an option is no option: an unknown time zone, a date that is none.
 *
 * @example
 * parseItineraryTable('TC/SS,Location,SS km,Road km,First car due\nTC0,Start,,0,09:00',
 *   { timeZone: 'Europe/Vienna', startDate: '2026-06-12', roadTimedFrom: 'stageStart' })
 */
export function parseItineraryTable(text: string, options: ItineraryTableOptions): ParsedItinerary {
  requireOptions('parseItineraryTable', options);
  if (text.length > MAX_TEXT_CHARACTERS) {
    return refusal(
      'text-too-long',
      'The text is longer than 1 MB, so it was not read. Paste the itinerary table only.',
    );
  }
  if (text.trim() === '')
    return refusal('empty-table', 'There is no table. Paste the itinerary with its headings.');
  const header = findHeader(text);
  if (!header) {
    const headings = NECESSARY_COLUMNS.map((key) => COLUMN_HEADINGS[key]).join(', ');
    return refusal(
      'header-missing',
      `The first row does not name the columns. Put these headings above the table: ${headings}.`,
      1,
    );
  }
  if (header.problems.some((problem) => problem.severity === 'error'))
    return { ok: false, problems: header.problems };
  const cells = splitCells(text, header.delimiter, MAX_TABLE_ROWS + 1);
  if (cells.rows.length > MAX_TABLE_ROWS) {
    return refusal(
      'too-many-rows',
      `The table has more than ${MAX_TABLE_ROWS} rows, so it was not read. Paste one event only.`,
    );
  }
  if (cells.openQuoteRow !== null) {
    return refusal(
      'open-quote',
      `A quoted cell in row ${cells.openQuoteRow + 1} never ends. Add the closing double quote or delete the opening one.`,
      cells.openQuoteRow + 1,
    );
  }
  return interpretReading(readTable(cells.rows, header), header.problems, options);
}
