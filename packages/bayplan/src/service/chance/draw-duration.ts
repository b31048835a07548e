import type { Chance } from '../../search/chance';
import { estimateDuration, type ThreePoint } from '../../times/three-point';

/**
 * Durations as they may turn out, drawn from the beta distribution between low and high whose mean is the plan's own,
 * (low + 4 likely + high) / 6 (Malcolm, Roseboom, Clark & Fazar 1959; its shapes are 1 + 4 (likely − low) / (high − low) and
 * 1 + 4 (high − likely) / (high − low)). A triangle over the same points has the mean (low + likely + high) / 3, so
 * simulated services would be longer than planned ones before anything had gone wrong.
 *
 * @throws RangeError unless 0 ≤ low ≤ likely ≤ high
 */
export function durationSource(duration: ThreePoint): (chance: Chance) => number {
  estimateDuration(duration);
  const { low, likely, high } = duration;
  const width = high - low;
  if (width === 0) return () => low;
  const first = 1 + (4 * (likely - low)) / width;
  const second = 1 + (4 * (high - likely)) / width;
  return (chance) => {
    const one = drawGamma(first, chance);
    return low + (width * one) / (one + drawGamma(second, chance));
  };
}

/** Of scale 1, for shapes from 1: squeeze and rejection by Marsaglia & Tsang 2000 (ACM Trans. Math. Softw. 26: 363–372). */
export function drawGamma(shape: number, chance: Chance): number {
  const size = shape - 1 / 3;
  const spread = 1 / Math.sqrt(9 * size);
  for (;;) {
    const normal = drawNormal(chance);
    const root = 1 + spread * normal;
    if (root <= 0) continue;
    const cube = root ** 3;
    const share = 1 - chance.share();
    if (Math.log(share) < 0.5 * normal ** 2 + size * (1 - cube + Math.log(cube))) return size * cube;
  }
}

/** By Marsaglia's polar method (Marsaglia & Bray 1964); the second of each pair is thrown away. */
export function drawNormal(chance: Chance): number {
  for (;;) {
    const first = 2 * chance.share() - 1;
    const second = 2 * chance.share() - 1;
    const square = first * first + second * second;
    if (square > 0 && square < 1) return first * Math.sqrt((-2 * Math.log(square)) / square);
  }
}
