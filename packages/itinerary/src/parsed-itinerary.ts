import type { Itinerary, ItineraryProblem } from './model';
import { type ItineraryProblemCode, WARNING_CODES } from './problem-code';

/** An itinerary, and at most warnings; or none, and what has to be mended. */
export type ParsedItinerary =
  | { ok: true; itinerary: Itinerary; warnings: ItineraryProblem[] }
  | { ok: false; problems: ItineraryProblem[] };

/** No itinerary, for one reason that concerns the whole text. */
export function refusal(
  code: ItineraryProblemCode,
  message: string,
  row: number | null = null,
): Extract<ParsedItinerary, { ok: false }> {
  return {
    ok: false,
    problems: [{ row, column: null, field: null, code, message, severity: severityOf(code) }],
  };
}

/** Whether a problem stops saving. */
export function severityOf(code: ItineraryProblemCode): 'error' | 'warning' {
  return WARNING_CODES.has(code) ? 'warning' : 'error';
}
