import { carPlace } from '@halfshaft/contract';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';

/**
 * Where a snag is. The log keeps the plain name of a place of the car plan, or words of someone who knew better.
 *
 * @example
 * placeInWords('frontLeft') // 'Front left'
 */
export function placeInWords(place: string): string {
  const known = carPlace.safeParse(place);
  return known.success ? CAR_PLACE_NAMES[known.data] : place;
}
