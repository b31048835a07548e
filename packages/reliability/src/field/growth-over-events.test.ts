import { describe, expect, it } from 'vitest';
import { answered, refused } from '../fixtures';
import { growthOverEvents } from './growth-over-events';

describe('growthOverEvents', () => {
  const over = (...counts: [distance: number, failures: number][]) =>
    growthOverEvents(counts.map(([distance, failures]) => ({ distance, failures })));

  it('tells falling from rising and from chance', () => {
    // Two equal events, six failures in one: sqrt(12 × 6) × 1/4 = 2.12, beyond the 1.96 of 95 %; with five 1.94.
    expect(over([100, 6], [100, 0])).toMatchObject({
      ok: true,
      direction: 'improving',
      rateSoFar: 0.03,
      rateNow: null,
    });
    expect(over([100, 0], [100, 6])).toMatchObject({ ok: true, direction: 'worsening' });
    expect(over([100, 5], [100, 0])).toMatchObject({ ok: true, direction: 'noTrend' });
    expect(over([500, 20], [500, 9], [500, 4])).toMatchObject({ ok: true, direction: 'improving' });
  });

  it('gives the rate of now from the published fit', () => {
    // The grouped example of the Reliability Growth and Repairable System Analysis Reference: shape 0.6315, 11 in 3000.
    const { rateNow } = answered(over([200, 2], [200, 1], [200, 1], [2400, 7]));
    expect(rateNow).toBeCloseTo((11 / 3000) * 0.6315, 6);
  });

  it('refuses what cannot tell', () => {
    expect(refused(over()).reason).toBe('tooFewEvents');
    expect(refused(over([100, 9])).reason).toBe('tooFewEvents');
    expect(refused(over([100, 9], [0, 3])).reason).toBe('tooFewEvents');
    expect(refused(over([100, 1], [100, 1])).reason).toBe('tooFewFailures');
  });

  it('loses no failure of an event in which nothing was driven', () => {
    expect(over([0, 2], [100, 1], [0, 1], [100, 0])).toMatchObject({ ok: true, failures: 4 });
  });

  it('cries wolf at most once in twenty: every way chance can share failures out over events, weighed', () => {
    const logFactorial = (n: number) =>
      Array.from({ length: n }, (_, index) => Math.log(index + 1)).reduce((sum, one) => sum + one, 0);
    for (const shares of [
      [0.5, 0.5],
      [0.8, 0.2],
      [0.5, 0.3, 0.2],
      [0.1, 0.2, 0.7],
    ]) {
      for (const failures of [3, 4, 6, 9, 15]) {
        const alarms = waysToShare(failures, shares.length).filter((counts) => {
          const growth = over(
            ...counts.map((count, index): [number, number] => [(shares[index] ?? 0) * 1000, count]),
          );
          return growth.ok && growth.direction !== 'noTrend';
        });
        const chance = alarms.reduce((sum, counts) => {
          const log = counts.reduce(
            (all, count, index) => all + count * Math.log(shares[index] ?? 1) - logFactorial(count),
            logFactorial(failures),
          );
          return sum + Math.exp(log);
        }, 0);
        expect(chance).toBeLessThanOrEqual(0.05);
      }
    }
  });
});

function waysToShare(failures: number, events: number): number[][] {
  if (events === 1) return [[failures]];
  return Array.from({ length: failures + 1 }, (_, first) => first).flatMap((first) =>
    waysToShare(failures - first, events - 1).map((rest) => [first, ...rest]),
  );
}
