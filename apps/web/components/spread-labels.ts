/**
 * Where labels stand that name the ends of curves: each as near to its own end as it can, none closer to the next than
 * `apart`, all between `top` and `bottom` as far as there is room.
 *
 * @param wanted heights, in any order
 * @returns heights in the same order
 * @example
 * spreadLabels([50, 52], { apart: 20, top: 0, bottom: 100 }) // [50, 70]
 */
export function spreadLabels(
  wanted: readonly number[],
  { apart, top, bottom }: { apart: number; top: number; bottom: number },
): number[] {
  const order = wanted
    .map((_, index) => index)
    .sort((one, other) => (wanted[one] ?? 0) - (wanted[other] ?? 0));
  const placed = wanted.map((height) => Math.min(Math.max(height, top), bottom));
  let free = top;
  for (const index of order) {
    placed[index] = Math.max(placed[index] ?? 0, free);
    free = (placed[index] ?? 0) + apart;
  }
  // What was pushed beyond the bottom pushes back.
  let limit = bottom;
  for (const index of order.toReversed()) {
    placed[index] = Math.min(placed[index] ?? 0, limit);
    limit = (placed[index] ?? 0) - apart;
  }
  return placed;
}
