import { formatClock, formatDay } from '@halfshaft/itinerary';
import { browserZone } from '../itinerary/time-zones';

const MILLIS_IN_SECOND = 1000;

/** A moment as the person's own clock shows it, with the day. */
export function whenInWords(millis: number, zone = browserZone()): string {
  const seconds = Math.floor(millis / MILLIS_IN_SECOND);
  return `${formatDay(seconds, zone)}, ${formatClock(seconds, zone)}`;
}
