import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quickAnswers, randomEvent, slowAnswers } from './random-events/fixtures';

/** The same comparison as in `event.slow.test.ts`, long enough for rare cases: run by hand, not with every change. */
const EVENTS = 100_000;

describe('random events, each judged twice', () => {
  it(`quick and slow never differ in ${EVENTS} of them`, () => {
    let compared = 0;
    fc.assert(
      fc.property(randomEvent, (question) => {
        expect(quickAnswers(question)).toEqual(slowAnswers(question));
        compared += 1;
      }),
      { numRuns: EVENTS },
    );
    expect(compared).toBe(EVENTS);
  });
});
