import { type Bounds, DEFAULT_LEVEL, type LevelOption } from '../model';
import { chiSquareQuantile } from '../special/chi-square-quantile';
import { walkToRoot } from '../walk-to-root';
import { climb } from './climb';
import { curveOf } from './curve-of';
import type { LifeFit } from './fitted-life';
import { fittedSurvival } from './fitted-survival';
import { logLikelihood } from './log-likelihood';
import { type LifeObservation, readObservations } from './read-observations';
import { measuredFrom } from './standard-curve';
import { summitOf } from './summit-of';

export interface RatioSurvival {
  surviving: number;
  bounds: Bounds;
}

/** Standardised log distances between which every share lies that a number can hold. */
const FURTHEST = 1000;
const FIRST_STEP = 0.5;

/**
 * The share still good after a distance, with the bounds to show: those by the likelihood ratio, which keep their promise
 * better than those of `fittedSurvival` (simulated in `fit/coverage.prove.ts`).
 *
 * A share is within them when the likeliest fit that has exactly this share there stays within half a chi-square
 * quantile of the top (Meeker & Escobar 1998, section 8.3.3). Holding the share holds the place of the distance on the
 * standard curve; measured from there the distance itself is the location, and only the spread is left to move.
 *
 * @param observations the lives that `fit` was made of
 * @throws RangeError when a distance makes no sense or the level is not between 0 and 1
 * @example
 * ratioSurvival(lives, fitWeibull(lives), 164.02) // NIST/SEMATECH 8.4.1.3: surviving 0.9
 */
export function ratioSurvival(
  observations: readonly LifeObservation[],
  fit: LifeFit,
  distance: number,
  { level = DEFAULT_LEVEL }: LevelOption = {},
): RatioSurvival {
  const { surviving } = fittedSurvival(fit, distance, { level });
  const lives = readObservations('ratioSurvival', observations);
  const curve = curveOf(fit);
  const summit = summitOf(lives, curve, fit);
  const allowed = chiSquareQuantile(level, 1) / 2;
  const location = Math.log(distance);
  const bestFrom = (zero: number, logSpread: number) => {
    const measured = measuredFrom(curve, zero);
    if (fit.distribution === 'exponential') {
      return { logSpread, point: logLikelihood(lives, measured, location, logSpread) };
    }
    return climb(lives, measured, { location, logSpread }, 'logSpread');
  };
  const walk = (step: number) => {
    let { logSpread } = summit;
    const excessDrop = (zero: number) => {
      // Each top is near the last one, so the climb goes on from there.
      const best = bestFrom(zero, logSpread);
      ({ logSpread } = best);
      return summit.point.value - best.point.value - allowed;
    };
    const start = (location - fit.location) / fit.spread;
    return walkToRoot(excessDrop, { start, step, furthest: FURTHEST, tolerance: 1e-8 });
  };
  const [early, late] = [walk(-FIRST_STEP), walk(FIRST_STEP)];
  const beyond = (zero: number) => Math.exp(curve.logBetween(zero, Infinity));
  return {
    surviving,
    bounds: { low: late === null ? 0 : beyond(late), high: early === null ? 1 : beyond(early) },
  };
}
