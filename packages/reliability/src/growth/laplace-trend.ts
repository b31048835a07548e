import { DEFAULT_LEVEL, type LevelOption } from '../model';
import { requireNumber } from '../require-number';
import { normalCumulative } from '../special/normal-cumulative';
import { judgeTrend, type Trend, type TrendRefusal } from './judge-trend';
import { type EventHistory, readHistory } from './read-history';
import { refuseFewFailures } from './refuse-few-failures';

const FEWEST_COUNTED = 3;

/**
 * Do failures come further and further apart, or closer and closer? Compares the middle of the failures with the middle
 * of the distance; the best test against a rate that changes exponentially.
 *
 * Assumes failures by chance if there is no trend. Statistic: standard normal without a trend, **negative when
 * improving**. Good from 3 counted failures up (Cox & Lewis 1966, section 3.3; NIST/SEMATECH e-Handbook 8.2.3.4).
 *
 * Refuses fewer than 3 failures whose place is left to chance (4, when the record stopped at a failure).
 *
 * @throws RangeError when an event is not above 0 or beyond the end, or the level is not between 0 and 1
 * @example
 * laplaceTrend({ stoppedAt: 'distance', events: [50, 60, 70, 75, 80, 85, 90, 95], end: 100 })
 * // direction 'worsening', statistic 2.51
 */
export function laplaceTrend(
  history: EventHistory,
  { level = DEFAULT_LEVEL }: LevelOption = {},
): Trend | TrendRefusal {
  requireNumber('laplaceTrend', 'level', level, 'share');
  const { end, failures, counted } = readHistory('laplaceTrend', history);
  const refusal = refuseFewFailures(failures, FEWEST_COUNTED + failures - counted.length, 'a trend');
  if (refusal) return refusal;
  const pastMiddle = counted.reduce((sum, event) => sum + (event - end / 2), 0);
  const statistic = (Math.sqrt(12 * counted.length) * pastMiddle) / (counted.length * end);
  return judgeTrend(
    {
      failures,
      statistic,
      pImproving: normalCumulative(statistic),
      pWorsening: normalCumulative(-statistic),
    },
    level,
  );
}
