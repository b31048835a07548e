import { describe, expect, it } from 'vitest';
import { logLikelihood } from './log-likelihood';
import { NORMAL, SMALLEST_EXTREME } from './standard-curve';

const LIVES = [
  { from: 4.2, to: 4.2 },
  { from: 5.1, to: 5.1 },
  { from: 4.9, to: Infinity },
  { from: -Infinity, to: 4.4 },
  { from: 4.1, to: 4.6 },
  { from: 5.6, to: 6.4 },
  { from: 4.5, to: 4.50001 },
];

describe.each([
  ['smallest extreme value', SMALLEST_EXTREME],
  ['normal', NORMAL],
])('logLikelihood of the %s distribution', (_, curve) => {
  it.each([
    [4.8, -0.5],
    [3.1, 0.4],
    [6.5, -0.2],
  ])('has the derivatives that differences show, at %f and %f', (location, logSpread) => {
    const width = 1e-5;
    const point = logLikelihood(LIVES, curve, location, logSpread);
    const right = logLikelihood(LIVES, curve, location + width, logSpread);
    const left = logLikelihood(LIVES, curve, location - width, logSpread);
    const above = logLikelihood(LIVES, curve, location, logSpread + width);
    const below = logLikelihood(LIVES, curve, location, logSpread - width);
    const near = (derivative: number, difference: number) =>
      expect(Math.abs(derivative - difference / (2 * width))).toBeLessThan(
        1e-6 * Math.max(1, Math.abs(derivative)),
      );
    near(point.byLocation, right.value - left.value);
    near(point.byLogSpread, above.value - below.value);
    near(point.byLocationTwice, right.byLocation - left.byLocation);
    near(point.byLogSpreadTwice, above.byLogSpread - below.byLogSpread);
    near(point.byBoth, above.byLocation - below.byLocation);
  });

  it('shares out all chance: a range and what lies on both sides of it', () => {
    for (const [low, high] of [
      [-0.3, 0.2],
      [1, 3],
      [-6, -5],
      [2, 2.001],
    ] as const) {
      const parts = [
        [-Infinity, low],
        [low, high],
        [high, Infinity],
      ] as const;
      const sum = parts.reduce((all, [from, to]) => all + Math.exp(curve.logBetween(from, to)), 0);
      expect(sum).toBeCloseTo(1, 13);
    }
  });

  it('keeps its digits far out on both sides', () => {
    for (const [from, to] of [
      [-1e3, -990],
      [-30, -29],
      [3, 3.5],
    ] as const) {
      const middle = (from + to) / 2;
      const parts = [curve.logBetween(from, middle), curve.logBetween(middle, to)] as const;
      const whole = Math.max(...parts) + Math.log1p(Math.exp(Math.min(...parts) - Math.max(...parts)));
      expect(curve.logBetween(from, to) / whole).toBeCloseTo(1, 12);
    }
  });
});
