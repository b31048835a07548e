import { describe, expect, it } from 'vitest';
import { expectDuration } from './expect-duration';

describe('expectDuration', () => {
  it('is the mean of the plan until the low point is passed', () => {
    expect(expectDuration({ low: 2, likely: 3.5, high: 8 }, 0)).toBe(4);
    expect(expectDuration({ low: 2, likely: 3.5, high: 8 }, 2)).toBe(4);
  });

  it('is the mean of what is left of the distribution after that', () => {
    // Likely is low: density 5 (1 − x)⁴, so above t the mean is t + (1 − t) / 6.
    expect(expectDuration({ low: 0, likely: 0, high: 1 }, 0.4)).toBeCloseTo(0.4 + 0.6 / 6, 4);
    // Likely in the middle: symmetric, so above ½ the mean is ½ + E|x − ½| = ½ + 5/32 for the shapes 3 and 3.
    expect(expectDuration({ low: 0, likely: 0.5, high: 1 }, 0.5)).toBeCloseTo(0.5 + 5 / 32, 4);
  });

  it('gives what is overdue a little more', () => {
    expect(expectDuration({ low: 2, likely: 10, high: 12 }, 15)).toBe(16);
    expect(expectDuration({ low: 5, likely: 5, high: 5 }, 5)).toBe(5.5);
  });
});
