import { describe, expect, it } from 'vitest';
import { formatDuration } from './format-duration';

describe('formatDuration', () => {
  it.each([
    [0, '0:00'],
    [5, '0:05'],
    [245, '4:05'],
    [3599, '59:59'],
    [3600, '1:00:00'],
    [3725, '1:02:05'],
    [-61, '1:01'],
  ])('shows %i seconds as %s', (seconds, face) => {
    expect(formatDuration(seconds)).toBe(face);
  });
});
