import { logNormalTail } from '../special/log-normal-tail';
import { normalQuantile } from '../special/normal-quantile';

/**
 * A standard distribution of z = (ln distance − location) / spread. Everything is on the log scale, since chances far
 * out in a tail are too small to be written down.
 */
export interface StandardCurve {
  logDensity: (z: number) => number;
  /** First and second derivative of the log density. */
  slope: (z: number) => number;
  bend: (z: number) => number;
  /** The logarithm of the chance of lying between two places; the ends may be endless. */
  logBetween: (from: number, to: number) => number;
  quantile: (chance: number) => number;
}

/** Smallest extreme value: the logarithm of a Weibull life (Meeker & Escobar 1998, section 4.6). */
export const SMALLEST_EXTREME: StandardCurve = {
  logDensity: (z) => z - Math.exp(z),
  slope: (z) => 1 - Math.exp(z),
  bend: (z) => -Math.exp(z),
  logBetween: (from, to) => {
    const logHazard = to + Math.log(-Math.expm1(from - to));
    const hazard = Math.exp(logHazard);
    // A chance this small is its hazard; the logarithm holds it even where the hazard itself has become zero.
    return -Math.exp(from) + (hazard < 1e-8 ? logHazard - hazard / 2 : Math.log(-Math.expm1(-hazard)));
  },
  quantile: (chance) => Math.log(-Math.log1p(-chance)),
};

const HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);

/** Normal: the logarithm of a lognormal life (Meeker & Escobar 1998, section 4.7). */
export const NORMAL: StandardCurve = {
  logDensity: (z) => -(z * z) / 2 - HALF_LOG_TWO_PI,
  slope: (z) => -z,
  bend: () => -1,
  // Measured from whichever tail is nearer, where neither chance is close to 1.
  logBetween: (from, to) => {
    if (from > 0) return logTailsBetween(from, to);
    if (to < 0) return logTailsBetween(-to, -from);
    return Math.log1p(-(tailBeyond(to) + tailBeyond(-from)));
  },
  quantile: normalQuantile,
};

function logTailsBetween(near: number, far: number): number {
  const logNear = logNormalTail(near);
  return logNear + Math.log(-Math.expm1(logNormalTail(far) - logNear));
}

function tailBeyond(z: number): number {
  return Math.exp(logNormalTail(z));
}

/**
 * The same distribution measured from another place: its zero lies where the given curve is at `zero`. The location of a
 * fit with it is the place of that quantile, so that a quantile can be estimated and bounded as any location is.
 */
export function measuredFrom(curve: StandardCurve, zero: number): StandardCurve {
  return {
    logDensity: (z) => curve.logDensity(z + zero),
    slope: (z) => curve.slope(z + zero),
    bend: (z) => curve.bend(z + zero),
    logBetween: (from, to) => curve.logBetween(from + zero, to + zero),
    quantile: (chance) => curve.quantile(chance) - zero,
  };
}
