import { COLUMN_HEADINGS } from '../table-columns';
import { headingMeaning } from './heading-meaning';
import type { ReadHeading, ReadTable } from './read-itinerary-model';

/**
 * A table as read, and mended, as tab separated text that `readItinerary` reads the same: what to keep of a paste. Each
 * column keeps its heading where that says what it means, else it gets the standard one and its unit. Lines that were left
 * out are not in it, so rows are numbered anew.
 *
 * @example
 * readTableToText(table).split('\n')[0] // 'TC/SS\tLocation\tSS km\tRoad km\tTotal km\tTarget time\tFirst car due'
 */
export function readTableToText(table: ReadTable): string {
  const rows = table.rows.map((row) => row.cells.map((cell) => cell.text));
  const lines = [table.headings.map(headingText), ...rows].map((cells) => cells.map(quote).join('\t'));
  return `${lines.join('\n')}\n`;
}

function headingText({ text, meaning, unit }: ReadHeading): string {
  if (meaning === null || meaning === 'surplus') return text;
  const own = headingMeaning(text);
  if (own.key === meaning && own.unit === unit) return text;
  const heading = COLUMN_HEADINGS[meaning];
  if (unit === 'miles') return heading.replace(/km$/, 'miles');
  return unit === 'minutes' ? `${heading} (min)` : heading;
}

function quote(cell: string): string {
  return /["\t\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
