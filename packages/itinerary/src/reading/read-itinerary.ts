import { MAX_TEXT_CHARACTERS } from '../limits';
import { parseItineraryTable } from '../parse-itinerary-table';
import { refusal } from '../parsed-itinerary';
import { requireOptions } from '../require-options';
import { cutDelimited } from './cut-delimited';
import { cutPrinted } from './cut-printed';
import { readCutTable } from './read-cut-table';
import type { ItineraryRead, ReadItineraryOptions } from './read-itinerary-model';

/**
 * Reads an itinerary in whatever shape it is pasted: a spreadsheet or text separated by tabs, semicolons, commas or
 * bars, with titles above, headings in one row or two, headings and pages repeated; or text copied from a PDF, its
 * columns parted by runs of spaces or single ones, names wrapped, section numbers in the margin. Decimal comma or
 * point; kilometres or miles; times with or without units; codes and dates in English, German, French, Spanish and
 * Italian. A text the strict reader (`parseItineraryTable`) takes is read the same here.
 *
 * `parsed` is an itinerary, or every problem by row, column, heading and sentence; nothing is half applied. `table`
 * holds the cells as they were understood, each with its problems, to be mended there (`editItineraryCell`).
 *
 * Throws when an option is no option: an unknown time zone, a date that is none.
 *
 * @example
 * readItinerary('TC/SS Location SS km Road km First car due\nTC 0 Start 09:00\nTC 1 Au 12,4 09:20', options)
 */
export function readItinerary(text: string, options: ReadItineraryOptions): ItineraryRead {
  requireOptions('readItinerary', options);
  if (text.length > MAX_TEXT_CHARACTERS) {
    const message = 'The text is longer than 1 MB, so it was not read. Paste the itinerary table only.';
    return { parsed: refusal('text-too-long', message), table: null };
  }
  if (text.trim() === '') {
    const message = 'There is no table. Paste the itinerary with its headings.';
    return { parsed: refusal('empty-table', message), table: null };
  }
  if (isTooLargeToSortOut(text)) return { parsed: parseItineraryTable(text, options), table: null };
  const cut = cutDelimited(text, options.startDate) ?? cutPrinted(text, options.startDate);
  return 'ok' in cut ? { parsed: cut, table: null } : readCutTable(cut, options);
}

/** Many times the largest itinerary: sorting out the columns of free text costs more than reading a strict table. */
const MOST_FREE_CHARACTERS = 100_000;
const LONGEST_FREE_LINE = 1500;

/** Then only the strict reader looks at it, which answers even nonsense of 1 MB in a moment. */
function isTooLargeToSortOut(text: string): boolean {
  return (
    text.length > MOST_FREE_CHARACTERS || text.split('\n').some((line) => line.length > LONGEST_FREE_LINE)
  );
}
