import type { Summit } from './climb';
import type { FittedLife } from './fitted-life';
import { logLikelihood } from './log-likelihood';
import type { LogLife } from './read-observations';
import type { StandardCurve } from './standard-curve';

/** The top of the likelihood where a fit has found it already. */
export function summitOf(
  lives: readonly LogLife[],
  curve: StandardCurve,
  { location, spread }: Pick<FittedLife, 'location' | 'spread'>,
): Summit {
  const logSpread = Math.log(spread);
  return {
    location,
    logSpread,
    point: logLikelihood(lives, curve, location, logSpread),
    settled: true,
  };
}
