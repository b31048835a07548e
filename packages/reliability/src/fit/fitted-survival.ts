import { type Bounds, DEFAULT_LEVEL, type LevelOption } from '../model';
import { requireNumber } from '../require-number';
import { normalQuantile } from '../special/normal-quantile';
import { curveOf } from './curve-of';
import type { LifeFit } from './fitted-life';

export interface FittedSurvival {
  surviving: number;
  bounds: Bounds;
}

/**
 * The share still good after a distance, under a fitted distribution.
 *
 * Bounds by the delta method on the standardised log distance, which keeps them between 0 and 1 (Meeker & Escobar 1998,
 * section 8.4.3).
 *
 * @throws RangeError when the distance is not above 0 or the level is not between 0 and 1
 * @example
 * fittedSurvival(fit, 164.022439) // for the NIST/SEMATECH 8.4.1.3 lives: surviving 0.9
 */
export function fittedSurvival(
  fit: LifeFit,
  distance: number,
  { level = DEFAULT_LEVEL }: LevelOption = {},
): FittedSurvival {
  requireNumber('fittedSurvival', 'distance', distance, 'positive');
  requireNumber('fittedSurvival', 'level', level, 'share');
  const curve = curveOf(fit);
  const place = (Math.log(distance) - fit.location) / fit.spread;
  const { location, logSpread, both } = fit.variance;
  const variance = location / fit.spread ** 2 + (2 * place * both) / fit.spread + place ** 2 * logSpread;
  const reach = normalQuantile((1 + level) / 2) * Math.sqrt(Math.max(0, variance));
  const beyond = (z: number) => Math.exp(curve.logBetween(z, Infinity));
  return { surviving: beyond(place), bounds: { low: beyond(place + reach), high: beyond(place - reach) } };
}
