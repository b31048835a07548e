import { at } from '../../at';
import type { CompiledWay } from '../compile-service';

/** Nobody sits there. */
export const EMPTY = -1;

/**
 * Finds people for a way's crews among those who are free: first somebody for each who must take part, then for each seat
 * still empty, in the order of `preference`; whoever sits already may move to another seat (augmenting paths, Kuhn 1955).
 * `seats` gets a person for each seat, crew by crew. False when there aren't enough.
 */
export function seatPeople(
  way: CompiledWay,
  free: Uint8Array,
  needed: readonly number[],
  preference: Int32Array,
  seats: Int32Array,
): boolean {
  seats.fill(EMPTY, 0, way.heads);
  for (const person of needed) {
    if (at(free, person) === 0 || !moveIn(person, way.seats, seats)) return false;
  }
  let filled = needed.length;
  for (let next = 0; next < preference.length && filled < way.heads; next += 1) {
    const person = at(preference, next);
    if (at(free, person) === 0 || isSeated(person, seats, way.heads)) continue;
    if (moveIn(person, way.seats, seats)) filled += 1;
  }
  return filled >= way.heads;
}

function isSeated(person: number, seats: Int32Array, heads: number): boolean {
  for (let seat = 0; seat < heads; seat += 1) if (at(seats, seat) === person) return true;
  return false;
}

/** Mostly a seat is empty; only otherwise somebody has to move. */
function moveIn(person: number, suits: CompiledWay['seats'], seats: Int32Array): boolean {
  for (let seat = 0; seat < suits.length; seat += 1) {
    if (at(seats, seat) !== EMPTY || !canSit(person, suits[seat])) continue;
    seats[seat] = person;
    return true;
  }
  return suits.length > 1 && makeRoom(person, suits, seats, new Set());
}

function makeRoom(
  person: number,
  suits: CompiledWay['seats'],
  seats: Int32Array,
  tried: Set<number>,
): boolean {
  for (let seat = 0; seat < suits.length; seat += 1) {
    if (tried.has(seat) || !canSit(person, suits[seat])) continue;
    tried.add(seat);
    const sitting = at(seats, seat);
    if (sitting !== EMPTY && !makeRoom(sitting, suits, seats, tried)) continue;
    seats[seat] = person;
    return true;
  }
  return false;
}

function canSit(person: number, able: Uint8Array | undefined): boolean {
  return able !== undefined && at(able, person) === 1;
}
