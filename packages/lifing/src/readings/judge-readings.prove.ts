import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quickPads, randomPads, slowPads } from '../slow-readings/fixtures';

/** The same comparison as in `judge-readings.slow.test.ts`, long enough for rare cases: run by hand, not with every change. */
const CARS = 100_000;

describe('random pads, each judged twice', () => {
  it(`quick and slow never differ in ${CARS} of them`, () => {
    let compared = 0;
    fc.assert(
      fc.property(randomPads, (question) => {
        expect(quickPads(question)).toEqual(slowPads(question));
        compared += 1;
      }),
      { numRuns: CARS },
    );
    expect(compared).toBe(CARS);
  });
});
