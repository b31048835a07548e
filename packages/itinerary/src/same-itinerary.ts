import type { Itinerary } from './model';

/**
 * True when two itineraries say the same, whatever the order of their keys: one that was stored and read back comes with
 * its keys in another order.
 *
 * @example
 * sameItinerary(read, structuredClone(read)) // true
 */
export function sameItinerary(one: Itinerary, other: Itinerary): boolean {
  return sameValue(one, other);
}

function sameValue(one: unknown, other: unknown): boolean {
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) {
    return one === other;
  }
  const keys = Object.keys(one);
  if (keys.length !== Object.keys(other).length) return false;
  return keys.every((key) => key in other && sameValue(Reflect.get(one, key), Reflect.get(other, key)));
}
