import type { OpenBounds } from '../model';
import { incompleteGamma } from '../special/incomplete-gamma';
import { lnGamma } from '../special/ln-gamma';
import { walkToRoot } from '../walk-to-root';
import type { ReadHistory } from './read-history';

interface Question extends ReadHistory {
  /** Sum of ln(end / event) over the counted events. */
  logSum: number;
  level: number;
}

/**
 * Exact bounds of the distance between failures at the end of a power-law record.
 *
 * Both ways rest on a quantity whose distribution holds no unknown but the one asked for (L. H. Crow 1982, Technometrics
 * 24:67-72). Let w = end × intensity × logSum.
 *
 * - Stopped at a distance: given logSum, the chance of n failures is in proportion to w^n / (n! (n − 1)!), so the
 *   bounds are the w under which this many failures, or more, or fewer, would just be too surprising.
 * - Stopped at a failure: w is the product of two independent gamma variables of shapes n and n − 1, so its quantiles
 *   give the bounds.
 */
export function boundDistanceNow({ end, failures, logSum, stoppedAt, level }: Question): OpenBounds {
  const tail = (1 - level) / 2;
  const asDistance = (logW: number | null) => (logW === null ? null : (end * logSum) / Math.exp(logW));
  const start = 2 * Math.log(failures);
  const solve = (excess: (logW: number) => number) => {
    const step = excess(start) > 0 ? 0.25 : -0.25;
    return walkToRoot(excess, { start, step, furthest: 300, tolerance: 1e-12 });
  };
  if (stoppedAt === 'failure') {
    const atMost = chanceOfProduct(failures);
    return {
      low: asDistance(solve((logW) => 1 - tail - atMost(logW))) ?? 0,
      high: asDistance(solve((logW) => tail - atMost(logW))),
    };
  }
  return {
    low: asDistance(solve((logW) => chanceOfCount(failures, logW) - tail)) ?? 0,
    high: asDistance(solve((logW) => chanceOfCount(failures - 1, logW) - (1 - tail))),
  };
}

/** The chance of at most `most` failures, given at least one. */
function chanceOfCount(most: number, logW: number): number {
  const logTerm = (n: number) => n * logW - lnGamma(n + 1) - lnGamma(n);
  const largest = Math.max(1, Math.exp(logW / 2));
  const peak = logTerm(largest);
  // Terms fall off like a normal curve of deviation sqrt(largest / 2) on both sides of the largest.
  const last = Math.ceil(Math.max(largest, most) + 10 * Math.sqrt(largest) + 20);
  let [within, all] = [0, 0];
  for (let n = 1; n <= last; n += 1) {
    const term = Math.exp(logTerm(n) - peak);
    all += term;
    if (n <= most) within += term;
  }
  return within / all;
}

const SLICES = 160;

/**
 * The chance that the product of gamma variables of shapes n and n − 1 is at most w: the second's chance averaged over
 * the logarithm of the first. The trapezoidal rule is as good as exact for a curve that dies away at both ends.
 */
function chanceOfProduct(shape: number): (logW: number) => number {
  const low = Math.log(shape) - 40 / shape - 8 / Math.sqrt(shape);
  const high = Math.log(shape) + 8 / Math.sqrt(shape);
  const width = (high - low) / SLICES;
  const slices = Array.from({ length: SLICES + 1 }, (_, index) => {
    const place = low + index * width;
    return { place, weight: width * Math.exp(shape * place - Math.exp(place) - lnGamma(shape)) };
  });
  return (logW) =>
    slices.reduce(
      (sum, { place, weight }) => sum + weight * incompleteGamma(shape - 1, Math.exp(logW - place)).lower,
      0,
    );
}
