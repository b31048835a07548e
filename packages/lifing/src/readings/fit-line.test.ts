import { describe, expect, it } from 'vitest';
import { fitLine, predictAt } from './fit-line';
import { studentT95 } from './student-t';

/*
 * Hydrocarbon level and oxygen purity: Montgomery and Runger, Applied Statistics and Probability for Engineers,
 * 3rd edition, table 11-1. The book's own fit and prediction interval are in table 11-2 (example 11-1).
 */
const OXYGEN: [number, number][] = [
  [0.99, 90.01],
  [1.02, 89.05],
  [1.15, 91.43],
  [1.29, 93.74],
  [1.46, 96.73],
  [1.36, 94.45],
  [0.87, 87.59],
  [1.23, 91.77],
  [1.55, 99.42],
  [1.4, 93.65],
  [1.19, 93.54],
  [1.15, 92.52],
  [0.98, 90.56],
  [1.01, 89.54],
  [1.11, 89.85],
  [1.2, 90.39],
  [1.26, 93.25],
  [1.32, 93.41],
  [1.43, 94.98],
  [0.95, 87.33],
];
const points = OXYGEN.map(([x, y]) => ({ x, y }));

describe('fitLine', () => {
  it('agrees with the published fit: constant 74.283, slope 14.947, S 1.087', () => {
    const line = fitLine(points);
    expect(line?.intercept).toBeCloseTo(74.283, 3);
    expect(line?.slope).toBeCloseTo(14.947, 3);
    expect(line?.spread).toBeCloseTo(1.087, 3);
    expect(line?.sumOfSquaresX).toBeCloseTo(0.68088, 5);
  });

  it('is exact on a line', () => {
    const line = fitLine([0, 1, 2, 3].map((x) => ({ x, y: 1 + 2 * x })));
    expect(line).toMatchObject({ intercept: 1, slope: 2, spread: 0, points: 4, meanX: 1.5 });
  });

  it('is null with two points, or with all at one x', () => {
    expect(fitLine(points.slice(0, 2))).toBeNull();
    expect(fitLine([1, 2, 3].map((y) => ({ x: 5, y })))).toBeNull();
  });
});

describe('predictAt', () => {
  it('agrees with the published 95 % prediction interval at 1.00: 86.830 to 91.632 about 89.231', () => {
    const line = fitLine(points);
    if (line === null) throw new Error('no line');
    // The book's t for 18 degrees of freedom, two-sided.
    const { expected, within } = predictAt(line, 1, 2.101);
    expect(expected).toBeCloseTo(89.231, 3);
    expect(expected - within).toBeCloseTo(86.83, 2);
    expect(expected + within).toBeCloseTo(91.632, 2);
  });

  it('is surest in the middle of the points and less sure the further away', () => {
    const line = fitLine(points);
    if (line === null) throw new Error('no line');
    const within = [line.meanX, 1.5, 2, 3].map((x) => predictAt(line, x, 1).within);
    expect(within).toEqual([...within].sort((a, b) => a - b));
    expect(within[0]).toBeGreaterThan(line.spread);
  });
});

describe('studentT95', () => {
  /** NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2, column 0.95. */
  it.each([
    [1, 6.314],
    [4, 2.132],
    [10, 1.812],
    [18, 1.734],
    [30, 1.697],
    [500, 1.697],
  ])('%i degrees of freedom: %f', (degrees, value) => {
    expect(studentT95(degrees)).toBe(value);
  });

  it('falls from each to the next', () => {
    for (let degrees = 2; degrees <= 30; degrees += 1) {
      expect(studentT95(degrees)).toBeLessThan(studentT95(degrees - 1));
    }
  });

  it('refuses what is no number of degrees', () => {
    expect(() => studentT95(0)).toThrow('studentT95');
    expect(() => studentT95(2.5)).toThrow('studentT95');
  });
});
