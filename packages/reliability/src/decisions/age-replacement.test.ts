import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frozen, relativeError } from '../fixtures';
import { ageReplacement, type ReplacementQuestion } from './age-replacement';
import { meanToReplacement } from './mean-to-replacement';

function planned(question: ReplacementQuestion) {
  const advice = ageReplacement(question);
  if (advice.policy !== 'replaceAt') throw new Error(`Expected a distance, got ${JSON.stringify(advice)}.`);
  return advice;
}

describe('ageReplacement', () => {
  // The optimum of Barlow & Proschan 1965, ch. 4; numbers computed with R in two ways that agree to 1e-7.
  it.each([
    [1.5, 10, 378.144492, 0.008301616, 0.011077322, 0.749425, 0.792523],
    [2, 5, 510.655224, 0.004085242, 0.005641896, 0.72409, 0.770459],
    [2, 10, 336.451191, 0.006056121, 0.011283792, 0.53671, 0.892973],
    [3, 2, 810.342027, 0.001969963, 0.002239693, 0.879568, 0.587362],
    [3, 5, 502.609582, 0.003031397, 0.005599233, 0.541395, 0.880762],
    [3, 10, 382.455531, 0.00394935, 0.011198465, 0.352669, 0.945593],
  ])('finds the best distance for shape %f when a failure costs %i times as much', (...row) => {
    const [shape, failureCost, distance, cost, runToFailure, ratio, reaches] = row;
    const advice = planned(frozen({ shape, scale: 1000, plannedCost: 1, failureCost }));
    expect(relativeError(advice.distance, distance)).toBeLessThan(1e-7);
    expect(relativeError(advice.costPerDistance, cost)).toBeLessThan(1e-6);
    expect(relativeError(advice.runToFailureCost, runToFailure)).toBeLessThan(1e-7);
    expect(1 - advice.saving).toBeCloseTo(ratio, 6);
    expect(advice.reachesIt).toBeCloseTo(reaches, 6);
  });

  it('compares with the mean life', () => {
    // Γ(3/2) and Γ(4/3): Abramowitz & Stegun 1964, table 6.1.
    for (const [shape, mean] of [
      [2, 886.226925],
      [3, 892.979512],
    ] as const) {
      const { runToFailureCost } = planned({ shape, scale: 1000, plannedCost: 1, failureCost: 10 });
      expect(relativeError(10 / runToFailureCost, mean)).toBeLessThan(1e-8);
    }
  });

  it('costs more at every other distance', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.2, max: 8, noNaN: true }),
        fc.double({ min: 1.5, max: 50, noNaN: true }),
        (shape, failureCost) => {
          const advice = ageReplacement({ shape, scale: 300, plannedCost: 1, failureCost });
          if (advice.policy !== 'replaceAt') return;
          const costAt = (distance: number) => {
            const surviving = Math.exp(-((distance / 300) ** shape));
            return (surviving + failureCost * (1 - surviving)) / meanToReplacement(shape, 300, distance);
          };
          expect(costAt(advice.distance) / advice.costPerDistance).toBeCloseTo(1, 9);
          for (const factor of [0.5, 0.95, 1.05, 2]) {
            expect(costAt(advice.distance * factor)).toBeGreaterThan(advice.costPerDistance * (1 - 1e-12));
          }
          expect(advice.saving).toBeGreaterThan(0);
        },
      ),
    );
  });

  it('moves with the unit of distance and not with the unit of cost', () => {
    const question = { shape: 2.4, scale: 700, plannedCost: 2, failureCost: 9 };
    const base = planned(question);
    expect(planned({ ...question, scale: 7000 }).distance).toBeCloseTo(base.distance * 10, 6);
    expect(planned({ ...question, plannedCost: 20, failureCost: 90 }).distance).toBeCloseTo(base.distance, 8);
  });

  it('says to run to failure when nothing can be gained, and why', () => {
    const because = (question: ReplacementQuestion) => {
      const advice = ageReplacement(question);
      return advice.policy === 'runToFailure' ? advice.because : advice.policy;
    };
    expect(because({ shape: 1, scale: 100, plannedCost: 1, failureCost: 10 })).toBe('doesNotWear');
    expect(because({ shape: 3, scale: 100, plannedCost: 1, failureCost: 1 })).toBe('failureCostsNoMore');
    expect(because({ shape: 1.01, scale: 100, plannedCost: 1, failureCost: 1.5 })).toBe('hardlyAnyReachesIt');
    expect(because({ shape: 3, scale: 100, plannedCost: 1, failureCost: 10 })).toBe('replaceAt');
  });

  it('throws on nonsense', () => {
    const question = { shape: 2, scale: 100, plannedCost: 1, failureCost: 10 };
    expect(() => ageReplacement({ ...question, plannedCost: 0 })).toThrow(
      'ageReplacement: plannedCost must be',
    );
    expect(() => ageReplacement({ ...question, scale: -5 })).toThrow(RangeError);
  });
});
