import { CARD_LIMITS } from '@halfshaft/lifing';

/**
 * A name for a copy that no card of the car has yet.
 *
 * @example
 * copyName('Wheel nuts', ['Wheel nuts']) // 'Wheel nuts (2)'
 */
export function copyName(name: string, taken: readonly string[]): string {
  let free = name;
  for (let number = 2; taken.includes(free); number += 1) {
    const sign = ` (${number})`;
    free = name.slice(0, CARD_LIMITS.nameCharacters - sign.length) + sign;
  }
  return free;
}
