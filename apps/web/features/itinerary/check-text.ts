import { type ItineraryText, itineraryText } from '@halfshaft/contract';
import { type Itinerary, type ItineraryProblem, parseItineraryTable } from '@halfshaft/itinerary';

/** What the live check says of a pasted itinerary. */
export type CheckedText =
  | { state: 'empty' }
  /** A day, zone or interval is not readable; its field says so when the form is sent. */
  | { state: 'settings' }
  | { state: 'bad'; problems: ItineraryProblem[] }
  | { state: 'good'; itinerary: Itinerary; warnings: ItineraryProblem[] };

/** Reads a pasted itinerary as the server will, so that the phone and the server never differ in what they say. */
export function checkText(text: ItineraryText): CheckedText {
  if (text.source.trim() === '') return { state: 'empty' };
  if (!itineraryText.safeParse(text).success) return { state: 'settings' };
  const read = parseItineraryTable(text.source, {
    timeZone: text.timeZone,
    startDate: text.startsOn,
    roadTimedFrom: text.roadTimedFrom,
    startIntervalSeconds: text.startIntervalSeconds,
    defaultGapSeconds: text.defaultGapSeconds,
  });
  return read.ok
    ? { state: 'good', itinerary: read.itinerary, warnings: read.warnings }
    : { state: 'bad', problems: read.problems };
}
