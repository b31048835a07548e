import type { JobCard } from './job-card';

/** The wheels, as the trade writes them: front left to rear right. */
export const CORNERS: readonly string[] = ['FL', 'FR', 'RL', 'RR'];

/**
 * Where something of a card can be wrong: where it is measured, else at each corner if it is about all four. Empty when
 * it has but one place.
 *
 * @example
 * positionsOfCard(frontPads) // ['FL', 'FR']
 */
export function positionsOfCard({ readings, place }: Pick<JobCard, 'readings' | 'place'>): readonly string[] {
  const measured = [...new Set(readings.flatMap((reading) => reading.positions))];
  return measured.length === 0 && place === 'allCorners' ? CORNERS : measured;
}

/**
 * Whether what was said of one place holds for another: the same place, one at that wheel, or a place of a card that was
 * spoken of as a whole.
 *
 * @example
 * isAtPosition('FL', 'FL inner') // true
 */
export function isAtPosition(said: string | null, position: string | null): boolean {
  return said === null || said === position || said === wheelOf(position);
}

/** "FL inner" is at FL. */
export function wheelOf(position: string | null): string | null {
  return position?.split(' ')[0] ?? null;
}
