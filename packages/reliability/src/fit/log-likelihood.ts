import type { LogLife } from './read-observations';
import type { StandardCurve } from './standard-curve';

/** The log-likelihood at one location and log spread, with its first and second derivatives in these two. */
export interface LikelihoodPoint {
  value: number;
  byLocation: number;
  byLogSpread: number;
  byLocationTwice: number;
  byBoth: number;
  byLogSpreadTwice: number;
}

const NARROW = 1e-4;

/**
 * Log-likelihood of lives under a log-location-scale distribution: density of the distance for a known failure, chance
 * of the range for everything else (Meeker & Escobar 1998, section 2.4 and chapter 8; derivatives by the chain rule
 * through z = (y − location) / spread).
 */
export function logLikelihood(
  lives: readonly LogLife[],
  curve: StandardCurve,
  location: number,
  logSpread: number,
): LikelihoodPoint {
  const spread = Math.exp(logSpread);
  const point = {
    value: 0,
    byLocation: 0,
    byLogSpread: 0,
    byLocationTwice: 0,
    byBoth: 0,
    byLogSpreadTwice: 0,
  };
  for (const { from, to } of lives) {
    const low = (from - location) / spread;
    const high = (to - location) / spread;
    const middle = (low + high) / 2;
    // In a narrow range the density does not change, and the difference of two chances would lose its digits.
    if ((high - low) * Math.max(1, Math.abs(curve.slope(middle))) < NARROW) {
      point.value += curve.logDensity(middle) - logSpread + (from === to ? -from : Math.log(to - from));
      point.byLogSpread -= 1;
      addSlope(point, middle, curve.slope(middle), spread);
      addBend(point, [middle, middle], curve.bend(middle), spread);
    } else addRange(point, curve, low, high, spread);
  }
  return point;
}

/** Adds the chance of a range. The derivative at an end is its density over that chance; an endless end has none. */
function addRange(
  point: LikelihoodPoint,
  curve: StandardCurve,
  low: number,
  high: number,
  spread: number,
): void {
  const logChance = curve.logBetween(low, high);
  point.value += logChance;
  const weigh = (z: number) => (Number.isFinite(z) ? Math.exp(curve.logDensity(z) - logChance) : 0);
  const atLow = weigh(low);
  const atHigh = weigh(high);
  if (atLow > 0) {
    addSlope(point, low, -atLow, spread);
    addBend(point, [low, low], -atLow * (curve.slope(low) + atLow), spread);
  }
  if (atHigh > 0) {
    addSlope(point, high, atHigh, spread);
    addBend(point, [high, high], atHigh * (curve.slope(high) - atHigh), spread);
  }
  if (atLow > 0 && atHigh > 0) addBend(point, [low, high], 2 * atLow * atHigh, spread);
}

/** A term whose derivative in z is `slope`; z itself bends in the log spread, hence the second derivatives. */
function addSlope(point: LikelihoodPoint, z: number, slope: number, spread: number): void {
  point.byLocation -= slope / spread;
  point.byLogSpread -= slope * z;
  point.byBoth += slope / spread;
  point.byLogSpreadTwice += slope * z;
}

/** A term whose second derivative in the two z is `bend` (twice it, when they are two different ones). */
function addBend(point: LikelihoodPoint, [one, other]: [number, number], bend: number, spread: number): void {
  point.byLocationTwice += bend / spread ** 2;
  point.byBoth += (bend * (one + other)) / (2 * spread);
  point.byLogSpreadTwice += bend * one * other;
}
