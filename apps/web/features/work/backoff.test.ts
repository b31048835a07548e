import { expect, it } from 'vitest';
import { pauseMillis } from './backoff';

it('doubles its pauses up to the longest', () => {
  expect([0, 1, 2, 4, 5, 50].map((attempt) => pauseMillis(attempt))).toEqual([
    1000, 2000, 4000, 16_000, 30_000, 30_000,
  ]);
  expect([0, 1, 6, 7, 50].map((attempt) => pauseMillis(attempt, 5000, 600_000))).toEqual([
    5000, 10_000, 320_000, 600_000, 600_000,
  ]);
});
