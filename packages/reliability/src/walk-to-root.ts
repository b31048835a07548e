import { findRoot } from './find-root';

export interface Walk {
  start: number;
  /** First step; its sign is the direction, and each further step is twice as long. */
  step: number;
  /** How far from the start to look before giving up. */
  furthest: number;
  tolerance: number;
}

/**
 * The nearest crossing of zero met when walking away from `start` in one direction, or `null` when there is none
 * within `furthest`. For functions that cross once on that side.
 *
 * @example
 * walkToRoot((x) => x - 10, { start: 0, step: 1, furthest: 100, tolerance: 1e-12 }) // 10
 */
export function walkToRoot(f: (x: number) => number, walk: Walk): number | null {
  const { start, furthest, tolerance } = walk;
  const startsAbove = f(start) > 0;
  const direction = Math.sign(walk.step);
  let [behind, reach, step] = [start, 0, Math.abs(walk.step)];
  while (reach < furthest) {
    reach = Math.min(reach + step, furthest);
    const ahead = start + direction * reach;
    if (f(ahead) > 0 !== startsAbove) return findRoot(f, behind, ahead, tolerance);
    behind = ahead;
    step *= 2;
  }
  return null;
}
