import { DEFAULT_LEVEL } from '../model';
import { fitLogLives } from './fit-log-lives';
import type { ExponentialFit, FitOptions, FitRefusal } from './fitted-life';
import { type LifeObservation, readObservations } from './read-observations';
import { SMALLEST_EXTREME } from './standard-curve';

/**
 * The exponential distribution that makes the observed lives likeliest: failures by chance, as likely on the first km as
 * on the last. A Weibull distribution with its shape held at 1, to be compared with `fitWeibull` by `akaike`.
 *
 * Observations and assumptions as for `fitWeibull`. One failure is enough, since there is one number to find; for exact
 * bounds from a count alone see `distanceBetweenFailures`.
 *
 * Refuses `tooFewFailures`, and `noSpread` when every failure was found at a first look, since the mean could then be 0.
 * Meeker & Escobar 1998, section 7.6.
 *
 * @throws RangeError when a distance makes no sense or an option is out of range
 * @example
 * fitExponential([{ kind: 'failedAt', distance: 100 }, { kind: 'goodAt', distance: 300 }])
 * // meanDistance 400
 */
export function fitExponential(
  observations: readonly LifeObservation[],
  { level = DEFAULT_LEVEL, fewestFailures = 1 }: FitOptions = {},
): ExponentialFit | FitRefusal {
  const lives = readObservations('fitExponential', observations);
  const fit = fitLogLives(lives, {
    functionName: 'fitExponential',
    curve: SMALLEST_EXTREME,
    fixedLogSpread: 0,
    level,
    fewestFailures,
  });
  if (!fit.ok) return fit;
  const { expLocation, expLogSpread, ...common } = fit;
  return {
    ...common,
    distribution: 'exponential',
    meanDistance: expLocation,
    mean: expLocation.value,
    standardDeviation: expLocation.value,
  };
}
