import { type Bounds, DEFAULT_LEVEL, type LevelOption } from '../model';
import { requireNumber } from '../require-number';
import { normalQuantile } from '../special/normal-quantile';

/** A share of things counted one by one, and where the true share lies. */
export interface CountedShare {
  share: number;
  bounds: Bounds;
}

/**
 * Which share of a count it was, with the score bounds (Wilson 1927, Journal of the American Statistical Association
 * 22:209-212). They stay within 0 and 1 and are good for small counts, too. Assumes that
 * the things counted do not hang together.
 *
 * @param had how many had it, of all `of`
 * @returns null of nothing
 * @throws RangeError when a count is not whole, more had it than there are, or the level is not between 0 and 1
 * @example
 * countedShare(4, 20)?.bounds // { low: 0.0807, high: 0.4160 }
 */
export function countedShare(
  had: number,
  of: number,
  { level = DEFAULT_LEVEL }: LevelOption = {},
): CountedShare | null {
  requireNumber('countedShare', 'level', level, 'share');
  if (!Number.isSafeInteger(had) || !Number.isSafeInteger(of) || had < 0 || had > of)
    throw new RangeError(`countedShare: ${had} of ${of} is no count.`);
  if (of === 0) return null;
  const z = normalQuantile((1 + level) / 2);
  const share = had / of;
  const middle = (share + z ** 2 / (2 * of)) / (1 + z ** 2 / of);
  const reach = (z / (1 + z ** 2 / of)) * Math.sqrt((share * (1 - share)) / of + z ** 2 / (4 * of ** 2));
  // Of none or all the formula ends at 0 or 1 exactly; rounding must not lead beyond.
  return { share, bounds: { low: had === 0 ? 0 : middle - reach, high: had === of ? 1 : middle + reach } };
}
