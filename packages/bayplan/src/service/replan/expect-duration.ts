import { estimateDuration, type ThreePoint } from '../../times/three-point';

const STEPS = 200;
/** What is still under way at its high point is given another tenth of its likely time (common practice, no source). */
const OVERDUE = 0.1;

/**
 * What a job takes on average once it has gone on so long: the mean of its beta distribution (see `durationSource`) above
 * that, by the midpoint rule. A job that has passed its low point will take longer than the plan had thought.
 *
 * @throws RangeError unless 0 ≤ low ≤ likely ≤ high
 * @example
 * expectDuration({ low: 2, likely: 3.5, high: 8 }, 0) // 4
 */
export function expectDuration(duration: ThreePoint, elapsed: number): number {
  const { mean } = estimateDuration(duration);
  const { low, likely, high } = duration;
  if (elapsed >= high) return elapsed + OVERDUE * likely;
  if (elapsed <= low) return mean;
  const first = (4 * (likely - low)) / (high - low);
  const second = (4 * (high - likely)) / (high - low);
  const width = (high - elapsed) / STEPS;
  let weight = 0;
  let sum = 0;
  for (let step = 0; step < STEPS; step += 1) {
    const point = elapsed + (step + 0.5) * width;
    const density = ((point - low) / (high - low)) ** first * ((high - point) / (high - low)) ** second;
    weight += density;
    sum += density * point;
  }
  return sum / weight;
}
