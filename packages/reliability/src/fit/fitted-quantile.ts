import { type Bounds, DEFAULT_LEVEL, type LevelOption } from '../model';
import { requireNumber } from '../require-number';
import { normalQuantile } from '../special/normal-quantile';
import { curveOf } from './curve-of';
import type { LifeFit } from './fitted-life';

export interface FittedQuantile {
  distance: number;
  bounds: Bounds;
}

/**
 * The distance by which a given share has failed, under a fitted distribution: 0.1 gives the B10 life, the usual base of
 * a replacement interval.
 *
 * Bounds by the delta method on the logarithm of distance (Meeker & Escobar 1998, section 8.4.2).
 *
 * @throws RangeError when the share or the level is not between 0 and 1
 * @example
 * fittedQuantile(fit, 0.1) // for the NIST/SEMATECH 8.4.1.3 lives: distance 164.02, bounds 83.88 to 320.75
 */
export function fittedQuantile(
  fit: LifeFit,
  failedShare: number,
  { level = DEFAULT_LEVEL }: LevelOption = {},
): FittedQuantile {
  requireNumber('fittedQuantile', 'the failed share', failedShare, 'share');
  requireNumber('fittedQuantile', 'level', level, 'share');
  const reach = fit.spread * curveOf(fit).quantile(failedShare);
  const { location, logSpread, both } = fit.variance;
  const variance = location + 2 * reach * both + reach ** 2 * logSpread;
  const distance = Math.exp(fit.location + reach);
  const stretch = Math.exp(normalQuantile((1 + level) / 2) * Math.sqrt(Math.max(0, variance)));
  return { distance, bounds: { low: distance / stretch, high: distance * stretch } };
}
