import type { LifeFit } from './fitted-life';
import { NORMAL, SMALLEST_EXTREME, type StandardCurve } from './standard-curve';

/** The standard curve behind a fit. */
export function curveOf({ distribution }: LifeFit): StandardCurve {
  return distribution === 'lognormal' ? NORMAL : SMALLEST_EXTREME;
}
