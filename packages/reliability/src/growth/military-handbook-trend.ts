import { DEFAULT_LEVEL, type LevelOption } from '../model';
import { requireNumber } from '../require-number';
import { incompleteGamma } from '../special/incomplete-gamma';
import { judgeTrend, type Trend, type TrendRefusal } from './judge-trend';
import { type EventHistory, readHistory } from './read-history';
import { refuseFewFailures } from './refuse-few-failures';

const FEWEST_COUNTED = 3;

/**
 * Do failures come further and further apart, or closer and closer? The best test against a power law, and exact.
 *
 * Assumes failures by chance if there is no trend. Statistic: chi-square with two degrees of freedom for each counted
 * failure without a trend, **large when improving** (MIL-HDBK-189 1981; NIST/SEMATECH e-Handbook 8.2.3.4).
 *
 * Refuses fewer than 3 failures whose place is left to chance (4, when the record stopped at a failure).
 *
 * @throws RangeError when an event is not above 0 or beyond the end, or the level is not between 0 and 1
 * @example
 * militaryHandbookTrend({ stoppedAt: 'distance', events: [5, 40, 43, 175, 389, 712, 747, 795, 1299, 1478], end: 1500 })
 * // statistic 37.23, pImproving 0.011, direction 'improving'
 */
export function militaryHandbookTrend(
  history: EventHistory,
  { level = DEFAULT_LEVEL }: LevelOption = {},
): Trend | TrendRefusal {
  requireNumber('militaryHandbookTrend', 'level', level, 'share');
  const { end, failures, counted } = readHistory('militaryHandbookTrend', history);
  const refusal = refuseFewFailures(failures, FEWEST_COUNTED + failures - counted.length, 'a trend');
  if (refusal) return refusal;
  const half = counted.reduce((sum, event) => sum + Math.log(end / event), 0);
  const { lower, upper } = incompleteGamma(counted.length, half);
  return judgeTrend({ failures, statistic: 2 * half, pImproving: upper, pWorsening: lower }, level);
}
