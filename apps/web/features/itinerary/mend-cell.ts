import { type ItineraryText, itineraryOptions, itineraryText } from '@halfshaft/contract';
import { editItineraryCell, readItinerary, readTableToText } from '@halfshaft/itinerary';

/** A cell by its place in the table as understood; rows of the text are numbered anew when lines above are dropped. */
export interface CellPlace {
  /** 0-based; null for the headings. */
  rowIndex: number | null;
  /** 1-based, as problems count columns. */
  column: number;
}

/**
 * The text with one cell written anew, as it is then kept: the table as understood, tab separated. Null when the text
 * has no such cell any more, or cannot be read for its settings.
 *
 * @example
 * mendCell(text, { rowIndex: 2, column: 3 }, '8.10')
 */
export function mendCell(text: ItineraryText, place: CellPlace, written: string): string | null {
  if (!itineraryText.safeParse(text).success) return null;
  const options = itineraryOptions(text);
  const { table } = readItinerary(text.source, options);
  const sourceRow = place.rowIndex === null ? null : table?.rows[place.rowIndex]?.sourceRow;
  if (!table || sourceRow === undefined || !table.headings[place.column - 1]) return null;
  const edited = editItineraryCell(table, { sourceRow, column: place.column, text: written }, options);
  return readTableToText(edited.table ?? table);
}
