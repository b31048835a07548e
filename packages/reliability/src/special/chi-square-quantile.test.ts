import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquareQuantile } from './chi-square-quantile';
import { incompleteGamma } from './incomplete-gamma';

describe('chiSquareQuantile', () => {
  // Abramowitz & Stegun 1964, table 26.8 (there by upper tail), to its printed digits.
  it.each([
    [0.995, 1, '7.87944'],
    [0.975, 1, '5.02389'],
    [0.95, 1, '3.84146'],
    [0.95, 2, '5.99146'],
    [0.975, 5, '12.8325'],
    [0.5, 5, '4.35146'],
    [0.95, 10, '18.3070'],
    [0.05, 10, '3.94030'],
    [0.995, 20, '39.9968'],
    [0.005, 30, '13.7867'],
    [0.95, 100, '124.342'],
    [0.05, 100, '77.9295'],
  ])('puts %f of the chance with %i degrees of freedom below %s', (chance, freedom, printed) => {
    expect(chiSquareQuantile(chance, freedom).toPrecision(6)).toBe(printed);
  });

  it('is closed with two degrees of freedom, far into both tails', () => {
    for (const chance of [1e-12, 1e-6, 0.1, 0.5, 0.9, 1 - 1e-6, 1 - 1e-12]) {
      const exact = -2 * Math.log1p(-chance);
      expect(Math.abs(chiSquareQuantile(chance, 2) / exact - 1)).toBeLessThan(1e-13);
    }
  });

  it('is undone by the chance it was asked for, and rises with it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }),
        fc.integer({ min: 1, max: 2000 }),
        (chance, freedom) => {
          const value = chiSquareQuantile(chance, freedom);
          const { lower, upper } = incompleteGamma(freedom / 2, value / 2);
          expect(chance < 0.5 ? lower / chance : upper / (1 - chance)).toBeCloseTo(1, 10);
          expect(chiSquareQuantile(chance + (1 - chance) / 2, freedom)).toBeGreaterThan(value);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('throws on a chance that is none', () => {
    expect(() => chiSquareQuantile(1, 3)).toThrow(
      'chance must be a number between 0 and 1, both left out, not 1.',
    );
    expect(() => chiSquareQuantile(0.5, 0)).toThrow(RangeError);
  });
});
