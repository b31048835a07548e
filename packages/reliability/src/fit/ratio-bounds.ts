import { chiSquareQuantile } from '../special/chi-square-quantile';
import { walkToRoot } from '../walk-to-root';
import { climb, type Summit } from './climb';
import { logLikelihood } from './log-likelihood';
import type { LogLife } from './read-observations';
import type { StandardCurve } from './standard-curve';

/** Beyond these the logarithms stop being numbers that mean anything for a part of a car. */
const FURTHEST = { location: 200, logSpread: 20 };

export interface RatioOptions {
  /** Which of the two is bounded; it is held at one value after another. */
  held: 'location' | 'logSpread';
  level: number;
  /** Length of the first step outwards. */
  standardError: number;
  /** False when the other one is fixed by the distribution, as the spread of an exponential life is. */
  otherMoves: boolean;
}

/**
 * Bounds of the location or of the log spread by the likelihood ratio: all values at which the best likelihood that is
 * left stays within half a chi-square quantile of the top. An end that is never reached is `null`.
 *
 * Meeker & Escobar 1998, section 8.3.2.
 */
export function ratioBounds(
  lives: readonly LogLife[],
  curve: StandardCurve,
  summit: Summit,
  { held, level, standardError, otherMoves }: RatioOptions,
): { low: number | null; high: number | null } {
  const allowed = chiSquareQuantile(level, 1) / 2;
  const moving = held === 'location' ? 'logSpread' : 'location';
  const walk = (step: number) => {
    let { location, logSpread } = summit;
    const excessDrop = (value: number) => {
      if (held === 'location') location = value;
      else logSpread = value;
      if (!otherMoves) {
        return summit.point.value - logLikelihood(lives, curve, location, logSpread).value - allowed;
      }
      // Each top is near the last one, so the climb goes on from there.
      const best = climb(lives, curve, { location, logSpread }, moving);
      ({ location, logSpread } = best);
      return summit.point.value - best.point.value - allowed;
    };
    return walkToRoot(excessDrop, { start: summit[held], step, furthest: FURTHEST[held], tolerance: 1e-10 });
  };
  return { low: walk(-standardError), high: walk(standardError) };
}
