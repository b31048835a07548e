import { incompleteGamma } from '../special/incomplete-gamma';
import { lnGamma } from '../special/ln-gamma';

/**
 * The mean distance a Weibull part runs when it is taken off at `distance` at the latest: the surviving share summed up
 * to there, scale / shape × Γ(1/shape) × P(1/shape, (distance/scale)^shape).
 */
export function meanToReplacement(shape: number, scale: number, distance: number): number {
  const { lower } = incompleteGamma(1 / shape, (distance / scale) ** shape);
  return scale * Math.exp(lnGamma(1 + 1 / shape)) * lower;
}
