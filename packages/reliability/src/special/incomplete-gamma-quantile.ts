import { requireNumber } from '../require-number';
import { walkToRoot } from '../walk-to-root';
import { incompleteGamma } from './incomplete-gamma';

/**
 * The x at which one tail of the gamma distribution (scale 1) has the given chance: the inverse of `incompleteGamma`.
 *
 * Solved on the logarithm of x, and always in the smaller tail, so that an extreme quantile keeps its digits.
 *
 * @param tail which side of x the chance lies on
 * @throws RangeError when shape is not above 0 or the chance is not between 0 and 1
 * @example
 * incompleteGammaQuantile(1, 0.5, 'lower') // 0.69314718056, the logarithm of 2
 */
export function incompleteGammaQuantile(shape: number, chance: number, tail: 'lower' | 'upper'): number {
  requireNumber('incompleteGammaQuantile', 'shape', shape, 'positive');
  requireNumber('incompleteGammaQuantile', 'chance', chance, 'share');
  const wantsLower = (tail === 'lower') === chance <= 0.5;
  const logWanted = Math.log(chance <= 0.5 ? chance : 1 - chance);
  // How much too large x is, as the logarithm of a ratio of chances.
  const excess = (logX: number) => {
    const { logLower, logUpper } = incompleteGamma(shape, Math.exp(logX));
    return wantsLower ? logLower - logWanted : logWanted - logUpper;
  };
  const start = Math.log(shape);
  const step = excess(start) > 0 ? -1 : 1;
  const logX = walkToRoot(excess, { start, step, furthest: 700, tolerance: 1e-15 });
  if (logX === null) {
    throw new RangeError(
      `incompleteGammaQuantile: ${chance} of shape ${shape} is too small a number to hold.`,
    );
  }
  return Math.exp(logX);
}
