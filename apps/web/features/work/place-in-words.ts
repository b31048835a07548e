import type { CarPlace } from '@halfshaft/lifing';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';

/**
 * Where a snag is. The log keeps the plain name of a place of the car plan, or words of someone who knew better.
 *
 * @example
 * placeInWords('frontLeft') // 'Front left'
 */
export function placeInWords(place: string): string {
  return isCarPlace(place) ? CAR_PLACE_NAMES[place] : place;
}

function isCarPlace(place: string): place is CarPlace {
  return Object.hasOwn(CAR_PLACE_NAMES, place);
}
