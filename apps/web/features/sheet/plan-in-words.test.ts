import { describe, expect, it } from 'vitest';
import { planInWords } from './plan-in-words';

const minute = (at: number) => `minute ${Math.floor(at / 60)}`;

describe('planInWords', () => {
  it.each([
    [200, 'By this plan all is done at minute 16, with 3 min to spare.'],
    [59, 'By this plan all is done at minute 19, with no minute to spare.'],
    [0, 'By this plan all is done at minute 20, with no minute to spare.'],
    [
      -61,
      'By this plan all is done at minute 21, 2 min after the car must leave. Find more hands, or decide what waits.',
    ],
  ])('with %i seconds to spare', (spareSeconds, sentence) => {
    expect(planInWords({ spareSeconds }, 1200, minute)).toBe(sentence);
  });
});
