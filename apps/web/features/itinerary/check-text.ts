import { type ItineraryText, itineraryOptions, itineraryText } from '@halfshaft/contract';
import { type Itinerary, type ItineraryProblem, type ReadTable, readItinerary } from '@halfshaft/itinerary';

/** What the live check says of a pasted itinerary. */
export type CheckedText =
  | { state: 'empty' }
  /** A day, zone or interval is not readable; its field says so when the form is sent. */
  | { state: 'settings' }
  /** The table is null where nothing could be made of the text, or where only the server said no. */
  | { state: 'bad'; problems: ItineraryProblem[]; table: ReadTable | null }
  | { state: 'good'; itinerary: Itinerary; warnings: ItineraryProblem[]; table: ReadTable | null };

/** Reads a pasted itinerary as the server will, so that the phone and the server never differ in what they say. */
export function checkText(text: ItineraryText): CheckedText {
  if (text.source.trim() === '') return { state: 'empty' };
  if (!itineraryText.safeParse(text).success) return { state: 'settings' };
  const { parsed, table } = readItinerary(text.source, itineraryOptions(text));
  return parsed.ok
    ? { state: 'good', itinerary: parsed.itinerary, warnings: parsed.warnings, table }
    : { state: 'bad', problems: parsed.problems, table };
}
