import { at } from '../../at';
import type { CompiledWay } from '../compile-service';

/**
 * Finds people for a way's crews among those who are free: first somebody for each who must take part, then for each seat
 * still empty, in the order of `preference`; whoever sits already may move to another seat (augmenting paths, Kuhn 1955).
 * `seats` gets a person for each seat, crew by crew. False when there aren't enough.
 */
export function seatPeople(
  { crew, heads }: CompiledWay,
  free: Uint8Array,
  needed: readonly number[],
  preference: Int32Array,
  seats: Int32Array,
): boolean {
  const suits = crew.flatMap(({ count, candidates }) => Array.from({ length: count }, () => candidates));
  seats.fill(EMPTY, 0, heads);
  for (const person of needed) {
    if (at(free, person) === 0 || !moveIn(person, suits, seats, new Set())) return false;
  }
  for (let filled = needed.length; filled < heads; filled += 1) {
    const next = preference.find(
      (person) =>
        at(free, person) === 1 && !seats.includes(person) && moveIn(person, suits, seats, new Set()),
    );
    if (next === undefined) return false;
  }
  return true;
}

const EMPTY = -1;

function moveIn(
  person: number,
  suits: readonly (readonly number[])[],
  seats: Int32Array,
  tried: Set<number>,
): boolean {
  for (let seat = 0; seat < suits.length; seat += 1) {
    if (tried.has(seat) || !suits[seat]?.includes(person)) continue;
    tried.add(seat);
    const sitting = at(seats, seat);
    if (sitting !== EMPTY && !moveIn(sitting, suits, seats, tried)) continue;
    seats[seat] = person;
    return true;
  }
  return false;
}
