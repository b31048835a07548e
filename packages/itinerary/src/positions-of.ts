import type { PositionsBySection } from './position-in';

/** Where a car starts: first, and from which later section in which other place. */
export interface EntryPositions {
  /** In the first section. */
  startPosition: number;
  /** By section, from the second one on; a section without one carries on the one before. */
  positionsBySection: Readonly<Record<string, number>>;
}

/**
 * All start positions of a car by the section from which they hold. What is set for the first section or before stands
 * in `startPosition` alone.
 *
 * @example
 * positionsOf({ startPosition: 12, positionsBySection: { 3: 9 } }) // Map { 1 => 12, 3 => 9 }
 */
export function positionsOf({ startPosition, positionsBySection }: EntryPositions): PositionsBySection {
  const later = Object.entries(positionsBySection)
    .map(([section, position]) => [Number(section), position] as const)
    .filter(([section]) => section > 1);
  return new Map([[1, startPosition], ...later]);
}
