import { requireNumber } from '../require-number';

// Bernoulli numbers B(2k) / (2k (2k - 1)): the coefficients of Stirling's series.
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156, -3617 / 122400];
const HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);
const SERIES_FROM = 10;

/**
 * The natural logarithm of the gamma function, for x > 0.
 *
 * Stirling's series (Abramowitz & Stegun 1964, 6.1.40) from 10 upwards; below, the recurrence Γ(x + 1) = x Γ(x)
 * (6.1.15) leads there. Good to about 1e-14, absolutely where the result is near zero.
 *
 * @throws RangeError when x is not above 0
 * @example
 * lnGamma(5) // 3.17805383035, the logarithm of 24
 */
export function lnGamma(x: number): number {
  requireNumber('lnGamma', 'x', x, 'positive');
  let [shifted, product] = [x, 1];
  while (shifted < SERIES_FROM) {
    product *= shifted;
    shifted += 1;
  }
  const series = STIRLING.reduceRight((sum, coefficient) => sum / shifted ** 2 + coefficient, 0) / shifted;
  return (shifted - 0.5) * Math.log(shifted) - shifted + HALF_LOG_TWO_PI + series - Math.log(product);
}
