import { requireNumber } from '../require-number';
import { incompleteGammaQuantile } from './incomplete-gamma-quantile';

/**
 * The value a standard normal variable stays below with the given chance: plus or minus the root of a chi-square
 * quantile with one degree of freedom (see `logNormalTail`).
 *
 * @throws RangeError when the chance is not between 0 and 1
 * @example
 * normalQuantile(0.975) // 1.95996398454
 */
export function normalQuantile(chance: number): number {
  requireNumber('normalQuantile', 'chance', chance, 'share');
  if (chance === 0.5) return 0;
  const bothTails = 2 * Math.min(chance, 1 - chance);
  const distance = Math.sqrt(2 * incompleteGammaQuantile(0.5, bothTails, 'upper'));
  return chance < 0.5 ? -distance : distance;
}
