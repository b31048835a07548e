import { DEFAULT_LEVEL } from '../model';
import { lnGamma } from '../special/ln-gamma';
import { fitLogLives } from './fit-log-lives';
import type { FitOptions, FitRefusal, WeibullFit } from './fitted-life';
import { invertEstimate } from './invert-estimate';
import { type LifeObservation, readObservations } from './read-observations';
import { SMALLEST_EXTREME } from './standard-curve';

/**
 * The Weibull distribution that makes the observed lives likeliest: the usual one for parts that wear.
 *
 * Takes failures known exactly, found between two looks, or found at the first look, and lives that have not failed.
 * Assumes independent lives under like conditions: split them at a modification, never pool over axle or surface.
 *
 * Newton's method on the location and log spread of ln distance; variances from the observed information; Meeker &
 * Escobar 1998, chapters 7 and 8; NIST/SEMATECH e-Handbook 8.4.1.3. With a shape below about 0.01 the mean and the standard
 * deviation pass what a number can hold and are `Infinity`.
 *
 * Refuses `tooFewFailures`; `noSpread` when all lives could have ended at one distance; `notSettled` when the likelihood has
 * no top (only possible with failures that were not seen exactly).
 *
 * @throws RangeError when a distance makes no sense or an option is out of range
 * @example
 * fitWeibull([100, 150, 230].map((distance) => ({ kind: 'failedAt', distance })))
 * // shape 3.32, scale 179.0
 */
export function fitWeibull(
  observations: readonly LifeObservation[],
  { level = DEFAULT_LEVEL, fewestFailures = 3 }: FitOptions = {},
): WeibullFit | FitRefusal {
  const lives = readObservations('fitWeibull', observations);
  const fit = fitLogLives(lives, {
    functionName: 'fitWeibull',
    curve: SMALLEST_EXTREME,
    level,
    fewestFailures,
  });
  if (!fit.ok) return fit;
  const { expLocation, expLogSpread, ...common } = fit;
  const logMean = fit.location + lnGamma(1 + fit.spread);
  // Variance over squared mean, by expm1 since for a narrow spread it is the difference of two nearly equal gammas.
  const relativeVariance = Math.expm1(lnGamma(1 + 2 * fit.spread) - 2 * lnGamma(1 + fit.spread));
  return {
    ...common,
    distribution: 'weibull',
    shape: invertEstimate(expLogSpread),
    scale: expLocation,
    mean: Math.exp(logMean),
    standardDeviation: Math.exp(logMean) * Math.sqrt(relativeVariance),
  };
}
