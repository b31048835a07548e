import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quickPads, randomPads, slowPads } from '../slow-readings/fixtures';

describe('random pads, each judged twice', () => {
  it('quick and slow never differ in 1,500 of them', () => {
    fc.assert(
      fc.property(randomPads, (question) => {
        expect(quickPads(question)).toEqual(slowPads(question));
      }),
      { numRuns: 1500 },
    );
  }, 60_000);

  // Two answers that agree on nothing prove nothing.
  const answers = fc.sample(randomPads, { numRuns: 600, seed: 7 }).map(quickPads);

  it.each(['outOfOrder', 'wearsOut', 'holds', 'notKnown'])('are often said to be %s', (code) => {
    const said = answers.filter((answer) => answer?.places.some((place) => place.split(' ')[1] === code));
    expect(said.length).toBeGreaterThan(20);
    expect(said.filter((answer) => answer?.doableHere === false).length).toBeGreaterThan(5);
  });

  it('and sometimes nothing is said', () => {
    expect(answers.filter((answer) => answer === null).length).toBeGreaterThan(20);
  });
});
