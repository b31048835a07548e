import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { poissonStock } from './poisson-stock';

/** Rule of MIL-HDBK-338B and IEC 62550:2017; numbers computed with R: qpois(p, m). Chances 80, 90, 95, 99, 99.9 %. */
const CHANCES = [0.8, 0.9, 0.95, 0.99, 0.999] as const;
const TABLE: readonly [mean: number, ...spares: number[]][] = [
  [0.1, 0, 0, 1, 1, 2],
  [0.25, 1, 1, 1, 2, 3],
  [0.5, 1, 1, 2, 3, 4],
  [0.75, 1, 2, 2, 3, 5],
  [1, 2, 2, 3, 4, 5],
  [1.5, 2, 3, 4, 5, 6],
  [2, 3, 4, 5, 6, 8],
  [2.5, 4, 5, 5, 7, 9],
  [3, 4, 5, 6, 8, 10],
  [4, 6, 7, 8, 9, 11],
  [5, 7, 8, 9, 11, 13],
  [6, 8, 9, 10, 12, 15],
  [8, 10, 12, 13, 15, 18],
  [10, 13, 14, 15, 18, 21],
  [15, 18, 20, 22, 25, 28],
  [20, 24, 26, 28, 31, 35],
  [25, 29, 32, 33, 37, 42],
  [50, 56, 59, 62, 67, 73],
];

describe('poissonStock', () => {
  it.each(TABLE)('gives the spares for a mean of %f', (mean, ...spares) => {
    expect(CHANCES.map((chance) => poissonStock(mean, chance).spares)).toEqual(spares);
  });

  it('says how often the mean itself is enough: 65 of 100 times for 3', () => {
    expect(poissonStock(3, 0.64)).toEqual({ spares: 3, chance: expect.closeTo(0.647231889, 9) });
  });

  it('is the least that is enough, by the plain sum of chances', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 80, noNaN: true }),
        fc.double({ min: 0.01, max: 0.9999, noNaN: true }),
        (mean, chance) => {
          const { spares, chance: reached } = poissonStock(mean, chance);
          let [term, sumBelow, sum] = [Math.exp(-mean), 0, 0];
          for (let n = 0; n <= spares; n += 1) {
            sumBelow = sum;
            sum += term;
            term *= mean / (n + 1);
          }
          expect(reached).toBeCloseTo(sum, 11);
          expect(sum).toBeGreaterThan(chance - 1e-12);
          expect(sumBelow).toBeLessThan(chance + 1e-12);
        },
      ),
    );
  });

  it('takes none when nothing is expected to fail, and throws on nonsense', () => {
    expect(poissonStock(0, 0.999)).toEqual({ spares: 0, chance: 1 });
    expect(() => poissonStock(-1, 0.9)).toThrow('poissonStock: mean must be a number of at least 0, not -1.');
    expect(() => poissonStock(1, 1)).toThrow('poissonStock: chance must be');
  });
});
