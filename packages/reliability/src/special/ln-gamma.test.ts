import { describe, expect, it } from 'vitest';
import { lnGamma } from './ln-gamma';

describe('lnGamma', () => {
  it('gives the published values of the gamma function', () => {
    // Abramowitz & Stegun 1964, table 6.1 and 6.1.8 to 6.1.13.
    expect(Math.exp(lnGamma(1 / 2))).toBeCloseTo(Math.sqrt(Math.PI), 13);
    expect(Math.exp(lnGamma(1 / 3))).toBeCloseTo(2.678938534707747, 13);
    expect(Math.exp(lnGamma(1 / 4))).toBeCloseTo(3.625609908221908, 13);
    expect(Math.exp(lnGamma(1.5))).toBeCloseTo(0.886226925452758, 13);
  });

  it('gives the logarithms of the factorials', () => {
    let sum = 0;
    for (let n = 1; n <= 200; n += 1) {
      sum += Math.log(n);
      expect(Math.abs(lnGamma(n + 1) - sum)).toBeLessThan(1e-13 * Math.max(1, sum));
    }
  });

  it('holds the duplication formula (6.1.18), also across the place where the series begins', () => {
    for (const x of [0.01, 0.3, 2.7, 4.99, 5, 5.01, 9.99, 40.5]) {
      const doubled = (2 * x - 1) * Math.LN2 - 0.5 * Math.log(Math.PI) + lnGamma(x) + lnGamma(x + 0.5);
      expect(lnGamma(2 * x)).toBeCloseTo(doubled, 12);
    }
  });

  it('throws on what has no logarithm', () => {
    expect(() => lnGamma(0)).toThrow('lnGamma: x must be a number above 0, not 0.');
    expect(() => lnGamma(Number.NaN)).toThrow(RangeError);
  });
});
