import { describe, expect, it } from 'vitest';
import { findRoot } from './find-root';
import { walkToRoot } from './walk-to-root';

describe('findRoot', () => {
  it('finds where a function crosses zero, whichever way it crosses', () => {
    expect(findRoot((x) => x * x - 2, 0, 2, 1e-14)).toBeCloseTo(Math.SQRT2, 13);
    expect(findRoot((x) => Math.cos(x), 0, 3, 1e-14)).toBeCloseTo(Math.PI / 2, 13);
    expect(findRoot((x) => Math.exp(x) - 1e8, -50, 50, 1e-13)).toBeCloseTo(Math.log(1e8), 11);
  });

  it('takes an end that is a root as it is', () => {
    expect(findRoot((x) => x, 0, 5, 1e-9)).toBe(0);
    expect(findRoot((x) => x - 5, 0, 5, 1e-9)).toBe(5);
  });

  it('throws when there is no crossing between the ends', () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1, 1e-9)).toThrow('the signs at -1 and 1 must differ');
  });
});

describe('walkToRoot', () => {
  const walk = { start: 0, step: 0.1, furthest: 1000, tolerance: 1e-12 };

  it('walks in the direction of its step until the sign changes', () => {
    expect(walkToRoot((x) => x - 321, walk)).toBeCloseTo(321, 9);
    expect(walkToRoot((x) => x + 7, { ...walk, step: -0.1 })).toBeCloseTo(-7, 9);
  });

  it('gives up beyond the furthest place', () => {
    expect(walkToRoot((x) => x + 7, walk)).toBeNull();
    expect(walkToRoot((x) => x - 1001, walk)).toBeNull();
    expect(walkToRoot((x) => x - 999, walk)).toBeCloseTo(999, 9);
  });
});
