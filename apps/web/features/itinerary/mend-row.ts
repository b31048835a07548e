import { type ItineraryText, itineraryOptions, itineraryText } from '@halfshaft/contract';
import {
  dropItineraryRow,
  putItineraryRow,
  type ReadRow,
  type ReadTable,
  type RowEdit,
  readItinerary,
} from '@halfshaft/itinerary';

/**
 * The text with one row more, or one row written anew. Null when what was written is no row of an itinerary: nothing in
 * it, or words that the row above would take as its own.
 */
export function withRow(text: ItineraryText, edit: RowEdit): string | null {
  const table = tableOf(text);
  if (!table || edit.rowIndex > table.rows.length - (edit.instead ? 1 : 0)) return null;
  const source = putItineraryRow(table, edit);
  const rows = tableOf({ ...text, source })?.rows.length;
  return rows === table.rows.length + (edit.instead ? 0 : 1) ? source : null;
}

/** The text without one of its rows; null when it has no such row any more. */
export function withoutRow(text: ItineraryText, rowIndex: number): string | null {
  const table = tableOf(text);
  return table?.rows[rowIndex] ? dropItineraryRow(table, rowIndex) : null;
}

/**
 * What a row is called: its first two words or figures.
 *
 * @example
 * rowName(row) // 'Row 7, SS1 Ridge'
 */
export function rowName({ sourceRow, cells }: ReadRow): string {
  const words = cells.map((cell) => cell.text).filter((text) => text !== '');
  return [`Row ${sourceRow}`, words.slice(0, 2).join(' ')].filter((part) => part !== '').join(', ');
}

function tableOf(text: ItineraryText): ReadTable | null {
  if (!itineraryText.safeParse(text).success) return null;
  return readItinerary(text.source, itineraryOptions(text)).table;
}
