import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addPerson, countPeople, hasPerson, wordsFor } from './people-set';

describe('a set of people', () => {
  it('holds whoever was added and nobody else, however many there are, and counts them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), fc.array(fc.nat(99)), (people, added) => {
        const members = new Set(added.filter((person) => person < people));
        const set = new Int32Array(wordsFor(people));
        for (const person of members) addPerson(set, person);
        const held = Array.from({ length: people }, (_, person) => person).filter((one) =>
          hasPerson(set, one),
        );
        expect(new Set(held)).toEqual(members);
        expect(set.reduce((sum, word) => sum + countPeople(word), 0)).toBe(members.size);
      }),
    );
  });
});
