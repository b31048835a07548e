/**
 * The step of a curve that holds at a distance: the last one not beyond it. `undefined` before the first step, where
 * nothing has happened yet. Works for every stepped curve of this package.
 *
 * @param steps in order of distance, as the curves list them
 * @example
 * stepAt([{ distance: 10, surviving: 0.9 }, { distance: 30, surviving: 0.8 }], 20) // { distance: 10, surviving: 0.9 }
 */
export function stepAt<Step extends { distance: number }>(
  steps: readonly Step[],
  distance: number,
): Step | undefined {
  return steps.findLast((step) => step.distance <= distance);
}
