import { estimateDuration, type ThreePoint } from '../times/three-point';

/**
 * What the plan gives a task, as the next whole number: its mean (see {@link estimateDuration}), or the duration that
 * suffices with a certainty, if low, likely and high are the corners of a triangular distribution, which stands for the beta
 * distribution where quantiles are asked for (Johnson 1997, The Statistician 46: 387–398).
 *
 * @throws RangeError unless 0 ≤ low ≤ likely ≤ high and the certainty is above 0 and below 1
 * @example
 * plannedDuration({ low: 2, likely: 3.5, high: 8 }) // 4
 * plannedDuration({ low: 0, likely: 0, high: 100 }, 0.75) // 50
 */
export function plannedDuration(duration: ThreePoint, certainty?: number): number {
  const { mean } = estimateDuration(duration);
  const planned = certainty === undefined ? mean : quantileOf(duration, certainty);
  return Math.ceil(planned - ROUNDING);
}

/** What arithmetic may add to a whole number must not cost another whole unit. */
const ROUNDING = 1e-9;

function quantileOf({ low, likely, high }: ThreePoint, certainty: number): number {
  if (!(certainty > 0 && certainty < 1)) {
    throw new RangeError(`plannedDuration: the certainty ${certainty} must be above 0 and below 1.`);
  }
  const width = high - low;
  if (width === 0) return low;
  const rising = (likely - low) / width;
  if (certainty <= rising) return low + Math.sqrt(certainty * width * (likely - low));
  return high - Math.sqrt((1 - certainty) * width * (high - likely));
}
