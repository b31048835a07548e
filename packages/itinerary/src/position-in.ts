/** Start positions of one car by the section from which they hold: the order is set anew at regroups. */
export type PositionsBySection = ReadonlyMap<number, number>;

/** One start position for the whole event, or those set anew at regroups. */
export type StartPosition = number | PositionsBySection;

/**
 * The start position of a car in a section: the one set in it, or in the last section before it.
 *
 * Throws when none is set so far, or when one is not a whole number from 1.
 *
 * @example
 * positionIn(new Map([[1, 12], [3, 9]]), 2) // 12
 */
export function positionIn(positions: PositionsBySection, section: number): number {
  let from = Number.NEGATIVE_INFINITY;
  let position: number | null = null;
  for (const [one, value] of positions) {
    if (one > section || one < from) continue;
    from = one;
    position = value;
  }
  if (position === null || !Number.isSafeInteger(position) || position < 1) {
    throw new RangeError(`positionIn: no start position from 1 is set for section ${section} or before it`);
  }
  return position;
}
