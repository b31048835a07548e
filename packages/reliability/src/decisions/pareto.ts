import { type Bounds, DEFAULT_LEVEL, type LevelOption, type Refusal } from '../model';
import { refuse } from '../refuse';
import { requireNumber } from '../require-number';
import { normalQuantile } from '../special/normal-quantile';

export interface ParetoRow {
  cause: string;
  count: number;
  share: number;
  /** Of the share this cause would have in the long run. */
  bounds: Bounds;
  /** Share of this cause and all above it. */
  shareSoFar: number;
}

export interface Pareto {
  ok: true;
  total: number;
  /** The most frequent cause first; equal ones by name. */
  rows: ParetoRow[];
}

/**
 * Which causes make up the failures: count, share and how sure the share is.
 *
 * Assumes that each failure has one cause, and that failures do not come in series (one bad batch is one cause seen often).
 * Bounds: Wilson 1927, the score interval, which holds its level with few failures (Newcombe 1998, Statistics in Medicine
 * 17:857-872).
 *
 * Refuses `noFailures` when there is nothing to count.
 *
 * @param causes one entry for each failure
 * @throws RangeError when the level is not between 0 and 1
 * @example
 * pareto(['brakes', 'brakes', 'electrics'])
 * // brakes 2, share 0.667, bounds 0.208 to 0.939; electrics 1, share 0.333, bounds 0.061 to 0.792
 */
export function pareto(
  causes: readonly string[],
  { level = DEFAULT_LEVEL }: LevelOption = {},
): Pareto | Refusal<'noFailures'> {
  requireNumber('pareto', 'level', level, 'share');
  const total = causes.length;
  if (total === 0) return refuse('noFailures', 'Nothing has failed yet.');
  const counts = new Map<string, number>();
  for (const cause of causes) counts.set(cause, (counts.get(cause) ?? 0) + 1);
  const z = normalQuantile((1 + level) / 2);
  let countSoFar = 0;
  const rows = [...counts]
    .sort(([a, first], [b, second]) => second - first || (a < b ? -1 : 1))
    .map(([cause, count]) => {
      countSoFar += count;
      const bounds = scoreBounds(count, total, z);
      return { cause, count, share: count / total, bounds, shareSoFar: countSoFar / total };
    });
  return { ok: true, total, rows };
}

function scoreBounds(count: number, total: number, z: number): Bounds {
  const share = count / total;
  const middle = share + z ** 2 / (2 * total);
  const reach = z * Math.sqrt((share * (1 - share)) / total + z ** 2 / (4 * total ** 2));
  const whole = 1 + z ** 2 / total;
  return { low: Math.max(0, (middle - reach) / whole), high: Math.min(1, (middle + reach) / whole) };
}
