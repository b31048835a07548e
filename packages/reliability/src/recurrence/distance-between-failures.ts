import { DEFAULT_LEVEL, type LevelOption, type OpenBounds, type Refusal } from '../model';
import { refuse } from '../refuse';
import { requireNumber } from '../require-number';
import { chiSquareQuantile } from '../special/chi-square-quantile';

export interface FailureCount {
  /** Driven by all the units together. */
  distance: number;
  failures: number;
  /** Why counting stopped: at a distance (the end of the log or the event), or at a failure. */
  stoppedAt: 'distance' | 'failure';
}

export interface DistanceBetweenFailures {
  ok: true;
  /** `null` when nothing has failed: then only the lower bound is known. */
  mean: number | null;
  bounds: OpenBounds;
}

/**
 * Mean distance between failures of something whose failures come by chance, with exact bounds.
 *
 * For "seen 3 times in 210 km". Assumes a constant rate: no wear, no growth (`laplaceTrend` tells). When counting stopped
 * at a failure the two-sided bounds are hit exactly as often as the level says; when it stopped at a distance, at least as
 * often, since a count has no room between two numbers. Without a failure the lower bound leaves no more doubt below it
 * than with one: all the doubt on that side would make bounds of some 3 expected failures hold 94 times in 100.
 *
 * Chi-square bounds: NIST/SEMATECH e-Handbook 8.4.5.1; Epstein & Sobel 1953.
 *
 * Refuses (`noDistance`) when nothing has been driven.
 *
 * @throws RangeError when the distance is negative, the count is not whole, or counting stopped at a failure without any
 * @example
 * distanceBetweenFailures({ distance: 800, failures: 2, stoppedAt: 'distance' }, { level: 0.9 })
 * // mean 400, bounds 127.07 to 2251.23
 */
export function distanceBetweenFailures(
  { distance, failures, stoppedAt }: FailureCount,
  { level = DEFAULT_LEVEL }: LevelOption = {},
): DistanceBetweenFailures | Refusal<'noDistance'> {
  requireNumber('distanceBetweenFailures', 'distance', distance, 'notNegative');
  requireNumber('distanceBetweenFailures', 'failures', failures, 'count');
  requireNumber('distanceBetweenFailures', 'level', level, 'share');
  if (failures === 0 && stoppedAt === 'failure') {
    throw new RangeError('distanceBetweenFailures: counting cannot stop at a failure when there was none.');
  }
  if (distance === 0)
    return refuse('noDistance', 'Nothing has been driven yet, so there is nothing to count.');
  const freedom = 2 * failures;
  const freedomLow = stoppedAt === 'distance' ? freedom + 2 : freedom;
  return {
    ok: true,
    mean: failures === 0 ? null : distance / failures,
    bounds: {
      low: (2 * distance) / chiSquareQuantile((1 + level) / 2, freedomLow),
      high: failures === 0 ? null : (2 * distance) / chiSquareQuantile((1 - level) / 2, freedom),
    },
  };
}
