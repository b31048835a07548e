import { DEFAULT_LEVEL } from '../model';
import { fitLogLives } from './fit-log-lives';
import type { FitOptions, FitRefusal, LognormalFit } from './fitted-life';
import { type LifeObservation, readObservations } from './read-observations';
import { NORMAL } from './standard-curve';

/**
 * The lognormal distribution that makes the observed lives likeliest: often the better one for cracks and fatigue.
 * Compare its `akaike` with that of `fitWeibull` on the same lives.
 *
 * Observations, assumptions, refusals and method as for `fitWeibull`; Meeker & Escobar 1998, chapters 7 and 8.
 *
 * @throws RangeError when a distance makes no sense or an option is out of range
 * @example
 * fitLognormal([100, 200, 400].map((distance) => ({ kind: 'failedAt', distance })))
 * // median 200, logDeviation 0.566 (the natural logarithm of 2 times the root of 2/3)
 */
export function fitLognormal(
  observations: readonly LifeObservation[],
  { level = DEFAULT_LEVEL, fewestFailures = 3 }: FitOptions = {},
): LognormalFit | FitRefusal {
  const lives = readObservations('fitLognormal', observations);
  const fit = fitLogLives(lives, { functionName: 'fitLognormal', curve: NORMAL, level, fewestFailures });
  if (!fit.ok) return fit;
  const { expLocation, expLogSpread, ...common } = fit;
  const mean = Math.exp(fit.location + fit.spread ** 2 / 2);
  return {
    ...common,
    distribution: 'lognormal',
    median: expLocation,
    logDeviation: expLogSpread,
    mean,
    standardDeviation: mean * Math.sqrt(Math.expm1(fit.spread ** 2)),
  };
}
