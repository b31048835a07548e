import type { JudgedPlace } from './judge-place';
import type { ReadingVerdict } from './model';
import { readingVerdict } from './reading-verdict';

/** One verdict from judged places of whatever readings of one card, the worst place first; null where none was read. */
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
