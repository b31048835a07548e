import { requireNumber } from '../require-number';
import { lnGamma } from './ln-gamma';

export interface IncompleteGamma {
  /** P(shape, x): the chance that a gamma variable of this shape and scale 1 is at most x. */
  lower: number;
  /** Q(shape, x) = 1 − P. */
  upper: number;
  /** The logarithms keep their digits where the chance itself is too small to be written down. */
  logLower: number;
  logUpper: number;
}

const PRECISION = 1e-16;
const TINY = 1e-300;
const MOST_TERMS = 100_000;

/**
 * Both tails of the gamma distribution (the regularised incomplete gamma functions). Chi-square, normal and Poisson
 * chances all come from this one function.
 *
 * Below shape + 1 the power series (Abramowitz & Stegun 1964, 6.5.29), above it the continued fraction (6.5.31), the
 * latter by the modified method of Lentz (Thompson & Barnett 1986, Journal of Computational Physics 64:490-509). The
 * tail that is computed directly is good to about 1e-13; the other is its complement.
 *
 * @throws RangeError when shape is not above 0 or x is negative
 * @example
 * incompleteGamma(1, 2).upper // 0.135335283237, which is exp(-2)
 */
export function incompleteGamma(shape: number, x: number): IncompleteGamma {
  requireNumber('incompleteGamma', 'shape', shape, 'positive');
  if (x === Infinity) return { lower: 1, upper: 0, logLower: 0, logUpper: -Infinity };
  requireNumber('incompleteGamma', 'x', x, 'notNegative');
  if (x === 0) return { lower: 0, upper: 1, logLower: -Infinity, logUpper: 0 };
  const logFactor = shape * Math.log(x) - x - lnGamma(shape);
  if (x < shape + 1) {
    const logLower = Math.min(0, logFactor + Math.log(series(shape, x)));
    const lower = Math.exp(logLower);
    return { lower, upper: 1 - lower, logLower, logUpper: Math.log1p(-lower) };
  }
  const logUpper = Math.min(0, logFactor + Math.log(continuedFraction(shape, x)));
  const upper = Math.exp(logUpper);
  return { lower: 1 - upper, upper, logLower: Math.log1p(-upper), logUpper };
}

function series(shape: number, x: number): number {
  let [term, sum] = [1 / shape, 1 / shape];
  for (let n = 1; n < MOST_TERMS && term > sum * PRECISION; n += 1) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}

function continuedFraction(shape: number, x: number): number {
  let base = x + 1 - shape;
  let numerator = 1 / TINY;
  let denominator = 1 / base;
  let value = denominator;
  for (let n = 1; n < MOST_TERMS; n += 1) {
    const weight = n * (shape - n);
    base += 2;
    denominator = 1 / awayFromZero(base + weight * denominator);
    numerator = awayFromZero(base + weight / numerator);
    const change = numerator * denominator;
    value *= change;
    if (Math.abs(change - 1) < PRECISION * 4) break;
  }
  return value;
}

function awayFromZero(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}
