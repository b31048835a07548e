import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quickAnswers, randomEvent, slowAnswers } from './random-events/fixtures';

describe('random events, each judged twice', () => {
  it('quick and slow never differ in 2,000 of them', () => {
    fc.assert(
      fc.property(randomEvent, (question) => {
        expect(quickAnswers(question)).toEqual(slowAnswers(question));
      }),
      { numRuns: 2000 },
    );
  }, 60_000);
});
