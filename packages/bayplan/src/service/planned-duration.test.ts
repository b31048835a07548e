import { describe, expect, it } from 'vitest';
import { plannedDuration } from './planned-duration';

describe('plannedDuration', () => {
  it('takes the mean, rounded up', () => {
    expect(plannedDuration({ low: 2, likely: 3.5, high: 8 })).toBe(4);
    expect(plannedDuration({ low: 2, likely: 3.5, high: 9 })).toBe(5);
    expect(plannedDuration({ low: 7, likely: 7, high: 7 })).toBe(7);
  });

  it('takes what suffices with a certainty on both sides of the likely duration', () => {
    // Triangle from 0 over 50 to 100: F(25) = 25² / (100 × 50) = 1/8, F(75) = 7/8.
    expect(plannedDuration({ low: 0, likely: 50, high: 100 }, 1 / 8)).toBe(25);
    expect(plannedDuration({ low: 0, likely: 50, high: 100 }, 7 / 8)).toBe(75);
    expect(plannedDuration({ low: 0, likely: 0, high: 100 }, 0.75)).toBe(50);
    expect(plannedDuration({ low: 6, likely: 6, high: 6 }, 0.9)).toBe(6);
  });

  it('refuses a certainty that is none', () => {
    expect(() => plannedDuration({ low: 1, likely: 2, high: 3 }, 1)).toThrow(
      'the certainty 1 must be above 0',
    );
  });
});
