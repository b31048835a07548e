import { type JudgedPlace, judgePlace, type PlaceQuestion, type PlaceRead } from './judge-place';
import type { ReadingVerdict } from './model';
import { readingVerdict } from './reading-verdict';

export type { PlaceRead } from './judge-place';

export interface PredictLimitQuestion extends PlaceQuestion {
  places: readonly PlaceRead[];
}

/**
 * Whether what wears reaches the next service where it can be put right, place by place: due now when one does not,
 * or is past its limit already; the worst place first. Only the lower limit counts where there is one, else the upper.
 *
 * `wornMetres` of the readings must count from `since` of their place, as `wearBetween` does. Null when the reading
 * has no limit, or nothing was read.
 *
 * @throws RangeError for a service that does not exist, and as `wearBetween` and `wearRate` do
 * @example
 * predictLimit({ ...question, card: frontPads, spec: pads, readings, places, cardRate: 60 })?.reasons[0]?.words
 * // "Pads FL: 6.2 mm now, 2.4 expected at Service C, limit 3.0: won't last"
 */
export function predictLimit(question: PredictLimitQuestion): ReadingVerdict | null {
  if (question.services[question.serviceIndex] === undefined) {
    throw new RangeError(`predictLimit: there is no service at index ${question.serviceIndex}.`);
  }
  const judged = question.places.map((place) => judgePlace(place, question));
  return verdictOfPlaces(judged, question);
}

/** The same from places judged already, of whatever readings of one card. */
export function verdictOfPlaces(
  places: readonly (JudgedPlace | null)[],
  question: Parameters<typeof readingVerdict>[1],
): ReadingVerdict | null {
  const [worst, ...others] = places
    .filter((place) => place !== null)
    .sort((first, second) => first.roomLeft - second.roomLeft)
    .map(({ reason }) => reason);
  return worst === undefined ? null : readingVerdict([worst, ...others], question);
}
