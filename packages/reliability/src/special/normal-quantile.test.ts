import { describe, expect, it } from 'vitest';
import { logNormalTail } from './log-normal-tail';
import { normalCumulative } from './normal-cumulative';
import { normalQuantile } from './normal-quantile';

describe('the normal distribution', () => {
  // Abramowitz & Stegun 1964, table 26.1 (chances) and the percentage points of table 26.5.
  it.each([
    [0, 0.5],
    [0.5, 0.691462461274013],
    [1, 0.841344746068543],
    [1.5, 0.933192798731142],
    [2, 0.977249868051821],
    [3, 0.99865010196837],
  ])('lies below %f with the published chance, and above its negative', (z, chance) => {
    expect(normalCumulative(z)).toBeCloseTo(chance, 14);
    expect(normalCumulative(-z)).toBeCloseTo(1 - chance, 14);
  });

  it.each([
    [0.975, '1.9599640'],
    [0.95, '1.6448536'],
    [0.9, '1.2815516'],
    [0.995, '2.5758293'],
    [0.999, '3.0902323'],
  ])('has the published quantile at %f, and its negative on the other side', (chance, printed) => {
    expect(normalQuantile(chance).toFixed(7)).toBe(printed);
    expect(normalQuantile(1 - chance)).toBeCloseTo(-normalQuantile(chance), 10);
  });

  it('keeps its digits in the tail, where the chance itself would be zero', () => {
    // Computed with mpmath at 40 digits.
    expect(logNormalTail(10) / -53.23128515051247).toBeCloseTo(1, 13);
    expect(logNormalTail(40) / -804.6084420137538).toBeCloseTo(1, 13);
    expect(normalQuantile(1e-15) / -7.941345326170997).toBeCloseTo(1, 12);
  });
});
