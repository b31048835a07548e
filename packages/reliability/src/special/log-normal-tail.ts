import { incompleteGamma } from './incomplete-gamma';

/**
 * The logarithm of the chance that a standard normal variable is above z; it keeps its digits far out, where the
 * chance itself would be written as zero.
 *
 * The square of a normal variable is a chi-square variable with one degree of freedom, so both tails beyond |z|
 * together are Q(1/2, z²/2) (Abramowitz & Stegun 1964, 26.2.29 and 6.5.17).
 *
 * @throws RangeError when z is not a number
 * @example
 * logNormalTail(0) // -0.69314718056, the logarithm of one half
 */
export function logNormalTail(z: number): number {
  const { upper, logUpper } = incompleteGamma(0.5, (z * z) / 2);
  return z >= 0 ? logUpper - Math.LN2 : Math.log1p(-upper / 2);
}
