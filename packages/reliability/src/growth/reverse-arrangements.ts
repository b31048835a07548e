import { DEFAULT_LEVEL, type LevelOption } from '../model';
import { requireNumber } from '../require-number';
import { normalCumulative } from '../special/normal-cumulative';
import { judgeTrend, type Trend, type TrendRefusal } from './judge-trend';
import { readHistory } from './read-history';
import { refuseFewFailures } from './refuse-few-failures';

const FEWEST_FAILURES = 4;
const MOST_COUNTED_EXACTLY = 50;

/**
 * Do failures come further and further apart, or closer and closer? Counts the pairs of gaps in which the later one is
 * longer. Assumes nothing about how long a gap usually is, so it also holds where failures do not come by chance.
 *
 * Statistic: that count, **large when improving**. Its chance without a trend is counted exactly over all orders of the
 * gaps up to 50 failures, and by the normal approximation with continuity correction above (Kendall 1938, Biometrika
 * 30:81-93; NIST/SEMATECH e-Handbook 8.2.3.4). Two equal gaps count for neither direction, so neither chance is
 * understated when distances were rounded.
 *
 * Refuses fewer than 4 failures: the most extreme order of 3 gaps still comes by chance once in six.
 *
 * @param events distances since first run, in any order; the first gap runs from 0
 * @throws RangeError when an event is not above 0 or the level is not between 0 and 1
 * @example
 * reverseArrangements([5, 40, 43, 175, 389, 712, 747, 795, 1299, 1478])
 * // statistic 33 of 45, pImproving 0.036, direction 'noTrend' at 95 % two-sided
 */
export function reverseArrangements(
  events: readonly number[],
  { level = DEFAULT_LEVEL }: LevelOption = {},
): Trend | TrendRefusal {
  requireNumber('reverseArrangements', 'level', level, 'share');
  const { failures, counted, end } = readHistory('reverseArrangements', { stoppedAt: 'failure', events });
  const refusal = refuseFewFailures(failures, FEWEST_FAILURES, 'a trend');
  if (refusal) return refusal;
  const gaps = [...counted, end].map((event, index) => event - (counted[index - 1] ?? 0));
  const longer = countPairs(gaps, (earlier, later) => earlier < later);
  const shorter = countPairs(gaps, (earlier, later) => earlier > later);
  const chanceOfAtLeast = failures <= MOST_COUNTED_EXACTLY ? exactTail(failures) : normalTail(failures);
  return judgeTrend(
    {
      failures,
      statistic: longer,
      pImproving: chanceOfAtLeast(longer),
      // Turned round, shorter pairs become longer ones, and every order is as likely as its reverse.
      pWorsening: chanceOfAtLeast(shorter),
    },
    level,
  );
}

function countPairs(gaps: readonly number[], holds: (earlier: number, later: number) => boolean): number {
  return gaps.reduce(
    (sum, earlier, index) => sum + gaps.slice(index + 1).filter((later) => holds(earlier, later)).length,
    0,
  );
}

/** Adding the k-th gap to an order of k − 1 makes it the longer one in 0 to k − 1 pairs, each equally likely. */
function exactTail(size: number): (atLeast: number) => number {
  let chances = [1];
  for (let k = 2; k <= size; k += 1) {
    const next = new Array<number>(chances.length + k - 1).fill(0);
    for (const [pairs, chance] of chances.entries()) {
      for (let more = 0; more < k; more += 1) next[pairs + more] = (next[pairs + more] ?? 0) + chance / k;
    }
    chances = next;
  }
  return (atLeast) =>
    Math.min(
      1,
      chances.slice(atLeast).reduceRight((sum, chance) => sum + chance, 0),
    );
}

function normalTail(size: number): (atLeast: number) => number {
  const expected = (size * (size - 1)) / 4;
  const deviation = Math.sqrt(((2 * size + 5) * (size - 1) * size) / 72);
  return (atLeast) => normalCumulative((expected + 0.5 - atLeast) / deviation);
}
