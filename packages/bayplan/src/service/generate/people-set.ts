import { at } from '../../at';

/** How many whole numbers it takes for a set of people: each holds 32 of them, a bit for each. */
export function wordsFor(people: number): number {
  return Math.ceil(people / 32);
}

export function addPerson(set: Int32Array, person: number): void {
  const word = person >> 5;
  set[word] = at(set, word) | (1 << (person & 31));
}

export function hasPerson(set: Int32Array, person: number): boolean {
  return ((at(set, person >> 5) >> (person & 31)) & 1) === 1;
}

/** How many of 32 people are in, by sums of neighbouring groups of bits (Warren 2012, Hacker's Delight, section 5–1). */
export function countPeople(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
