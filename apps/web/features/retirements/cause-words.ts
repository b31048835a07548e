import { CAUSE_WORDS } from '@halfshaft/itinerary';
import { capitalise } from '@/lib/capitalise';

/**
 * A stated cause as it stands on screen.
 *
 * @example
 * causeInWords('offRoad') // 'Off road'
 */
export function causeInWords(cause: string): string {
  const words = Object.entries(CAUSE_WORDS).find(([key]) => key === cause)?.[1][0];
  return capitalise(words ?? cause);
}
