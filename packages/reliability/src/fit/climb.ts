import { type LikelihoodPoint, logLikelihood } from './log-likelihood';
import type { LogLife } from './read-observations';
import type { StandardCurve } from './standard-curve';

export interface Summit {
  location: number;
  logSpread: number;
  point: LikelihoodPoint;
  /** False when the likelihood still rises after all rounds: it has no top, or one too flat to find. */
  settled: boolean;
}

/** Which of the two may move; a bound holds one of them still. */
export type Free = 'both' | 'location' | 'logSpread';

const MOST_ROUNDS = 200;
/** Below this expected gain, rounding hides whether a step rises; but so near the top a whole step is right. */
const TRUSTED_GAIN = 1e-9;
/** Below this one more step is exact to the last digits. */
const SMALL_GAIN = 1e-14;

/**
 * The top of the likelihood by Newton's method: steps are shortened until they rise, and where the surface is not
 * bowl-shaped its curvature is lifted until it is (Nocedal & Wright 2006, section 3.4).
 */
export function climb(
  lives: readonly LogLife[],
  curve: StandardCurve,
  start: { location: number; logSpread: number },
  free: Free = 'both',
): Summit {
  let { location, logSpread } = start;
  let point = logLikelihood(lives, curve, location, logSpread);
  let gain = Infinity;
  for (let round = 0; round < MOST_ROUNDS && gain >= SMALL_GAIN; round += 1) {
    const step = newtonStep(point, free, Math.exp(logSpread));
    gain = (step.location * point.byLocation + step.logSpread * point.byLogSpread) / 2;
    const at = (part: number) =>
      logLikelihood(lives, curve, location + part * step.location, logSpread + part * step.logSpread);
    let part = 1;
    let next = at(part);
    while (gain >= TRUSTED_GAIN && !(next.value >= point.value)) {
      part /= 4;
      if (part < 1e-6) return { location, logSpread, point, settled: false };
      next = at(part);
    }
    location += part * step.location;
    logSpread += part * step.logSpread;
    point = next;
  }
  return { location, logSpread, point, settled: gain < TRUSTED_GAIN };
}

function newtonStep(
  point: LikelihoodPoint,
  free: Free,
  spread: number,
): { location: number; logSpread: number } {
  // In units of the spread, so that lifting the curvature means the same in both directions.
  const slope = [
    free === 'logSpread' ? 0 : point.byLocation * spread,
    free === 'location' ? 0 : point.byLogSpread,
  ] as const;
  const across = free === 'both' ? -point.byBoth * spread : 0;
  let along = free === 'logSpread' ? 1 : -point.byLocationTwice * spread ** 2;
  let up = free === 'location' ? 1 : -point.byLogSpreadTwice;
  const smallest = (along + up) / 2 - Math.hypot((along - up) / 2, across);
  const size = Math.abs(along) + Math.abs(up) + Math.abs(across);
  if (smallest < 1e-9 * size) {
    const lift = 0.1 * size - smallest;
    along += lift;
    up += lift;
  }
  const determinant = along * up - across * across;
  const location = (up * slope[0] - across * slope[1]) / determinant;
  const logSpread = (along * slope[1] - across * slope[0]) / determinant;
  // A long step leaves the neighbourhood that its curvature describes.
  const shrink = Math.min(1, 2 / Math.hypot(location, logSpread));
  return { location: location * shrink * spread, logSpread: logSpread * shrink };
}
