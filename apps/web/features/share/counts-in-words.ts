import { type CarPlace, incidentInWords } from '@halfshaft/lifing';
import type { CarCounts } from '@halfshaft/worklog';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';

/** One line of what was counted: what, where or which, how often. */
export interface CountedLine {
  what: string;
  which: string;
  times: number;
}

/**
 * Everything that was counted, the most frequent first.
 *
 * @example
 * countedLines({ ...counts, snags: { boot: 2 } }) // [{ what: 'Snag', which: 'Boot', times: 2 }]
 */
export function countedLines({ snags, needsWork, incidents }: CarCounts): CountedLine[] {
  const byPlace = (what: string, counts: Partial<Record<CarPlace, number>>) =>
    (Object.entries(counts) as [CarPlace, number][]).map(([place, times]) => ({
      what,
      which: CAR_PLACE_NAMES[place],
      times,
    }));
  const onRoad = Object.entries(incidents) as [Parameters<typeof incidentInWords>[0], number][];
  return [
    ...byPlace('Snag', snags),
    ...byPlace('Needed work', needsWork),
    ...onRoad.map(([code, times]) => ({ what: 'On the road', which: incidentInWords(code), times })),
  ].sort((one, other) => other.times - one.times);
}

/**
 * What was counted, in one sentence.
 *
 * @example
 * foundInWords(counts) // 'Snag, Front left: 2. On the road, through a ford: 1.'
 */
export function foundInWords(counts: CarCounts): string {
  const lines = countedLines(counts).map(({ what, which, times }) => `${what}, ${which}: ${times}.`);
  return lines.join(' ') || 'Nothing.';
}
