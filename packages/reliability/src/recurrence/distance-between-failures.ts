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
  sided: Sided;
}

/** `one`: all the doubt lies below the lower bound, and there is no upper one. */
type Sided = 'one' | 'two';

/**
 * Mean distance between failures of something whose failures come by chance, with exact bounds.
 *
 * For "seen 3 times in 210 km". Assumes a constant rate: no wear, no growth (`laplaceTrend` tells). When counting stopped
 * at a failure the two-sided bounds are hit exactly as often as the level says; when it stopped at a distance, at least as
 * often, since a count has no room between two numbers. Without a failure there is no upper bound, so that the lower one is
 * one-sided unless `sided` says otherwise. Who shows bounds whatever the count asks for two sides of all: a side chosen by
 * what was counted makes bounds of some 3 expected failures hold 94 times in 100 where 95 are asked.
 *
 * Chi-square bounds: NIST/SEMATECH e-Handbook 8.4.5.1; Epstein & Sobel 1953.
 *
 * Refuses (`noDistance`) when nothing has been driven.
 *
 * @throws RangeError when the distance is negative, the count is not whole, or counting stopped at a failure without any
 * @example
 * distanceBetweenFailures({ distance: 800, failures: 2, stoppedAt: 'distance' }, { level: 0.9 })
 * // mean 400, bounds 127.07 to 2251.23, two-sided
 */
export function distanceBetweenFailures(
  { distance, failures, stoppedAt }: FailureCount,
  { level = DEFAULT_LEVEL, sided = failures === 0 ? 'one' : 'two' }: LevelOption & { sided?: Sided } = {},
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
  const low = (2 * distance) / chiSquareQuantile(sided === 'one' ? level : (1 + level) / 2, freedomLow);
  const isOpen = sided === 'one' || failures === 0;
  const high = isOpen ? null : (2 * distance) / chiSquareQuantile((1 - level) / 2, freedom);
  return { ok: true, mean: failures === 0 ? null : distance / failures, bounds: { low, high }, sided };
}
