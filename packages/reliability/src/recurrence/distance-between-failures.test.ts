import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, refused, relativeError } from '../fixtures';
import { distanceBetweenFailures } from './distance-between-failures';

describe('distanceBetweenFailures, against published values', () => {
  // Factors on the mean for 90 %: NIST/SEMATECH e-Handbook 8.4.5.1 (there to four digits); digits computed with R.
  it.each([
    [1, 0.2107986, 19.4957257],
    [2, 0.3176724, 5.6280715],
    [3, 0.3869142, 3.6688656],
    [4, 0.4369904, 2.9275753],
    [5, 0.4756001, 2.5378784],
    [6, 0.5066542, 2.2961983],
    [7, 0.5323958, 2.1306933],
    [8, 0.554222, 2.0096348],
    [9, 0.573058, 1.91684],
    [10, 0.5895455, 1.8431801],
  ])('gives the factors for %i failures', (failures, low, high) => {
    const { mean, bounds, sided } = answered(
      distanceBetweenFailures({ distance: failures, failures, stoppedAt: 'distance' }, { level: 0.9 }),
    );
    expect(mean).toBe(1);
    expect(sided).toBe('two');
    expect(bounds.low).toBeCloseTo(low, 7);
    expect(bounds.high).toBeCloseTo(high, 7);
  });

  it('gives the example of 2 failures in 800 hours', () => {
    const seen = { distance: 800, failures: 2 };
    const bounds = (stoppedAt: 'distance' | 'failure', level: number) =>
      answered(distanceBetweenFailures({ ...seen, stoppedAt }, { level })).bounds;
    // Computed with R: 2T / qchisq(...).
    for (const [{ low, high }, [expectedLow, expectedHigh]] of [
      [bounds('distance', 0.9), [127.068968, 2251.228611]],
      [bounds('distance', 0.95), [110.73143, 3302.92879]],
      [bounds('failure', 0.9), [168.63888, 2251.228611]],
    ] as const) {
      expect(relativeError(low, expectedLow)).toBeLessThan(1e-8);
      expect(relativeError(high ?? 0, expectedHigh)).toBeLessThan(1e-8);
    }
  });

  it.each([
    [800, 0.9, 347.435586],
    [1000, 0.5, 1442.69504],
    [1000, 0.6, 1091.35667],
    [1000, 0.9, 434.294482],
    [1000, 0.95, 333.808201],
  ])('gives the lower bound without a failure in %i at %f', (distance, level, low) => {
    const result = answered(
      distanceBetweenFailures({ distance, failures: 0, stoppedAt: 'distance' }, { level }),
    );
    expect(result).toMatchObject({ mean: null, sided: 'one', bounds: { high: null } });
    expect(relativeError(result.bounds.low, low)).toBeLessThan(1e-8);
  });
});

describe('distanceBetweenFailures', () => {
  it('has bounds that hold the mean, widen with the level and grow with the distance', () => {
    const failures = fc.integer({ min: 1, max: 300 });
    fc.assert(
      fc.property(failures, fc.constantFrom('distance', 'failure'), (count, stoppedAt) => {
        const ask = (distance: number, level: number) =>
          answered(distanceBetweenFailures({ distance, failures: count, stoppedAt }, { level }));
        const [narrow, wide, far] = [ask(500, 0.5), ask(500, 0.95), ask(1000, 0.5)];
        expect(wide.bounds.low).toBeLessThan(narrow.bounds.low);
        expect(narrow.bounds.low).toBeLessThan(narrow.mean ?? 0);
        expect(narrow.bounds.high ?? 0).toBeGreaterThan(narrow.bounds.low);
        expect(wide.bounds.high ?? 0).toBeGreaterThan(narrow.bounds.high ?? 0);
        expect(far.bounds.low / narrow.bounds.low).toBeCloseTo(2, 12);
      }),
    );
  });

  it('takes the sides that are asked for, whatever was counted', () => {
    const ask = (failures: number, level: number, sides: { sided?: 'one' | 'two' } = {}) =>
      answered(
        distanceBetweenFailures({ distance: 800, failures, stoppedAt: 'distance' }, { level, ...sides }),
      );
    for (const failures of [0, 1, 7]) {
      const one = ask(failures, 0.95, { sided: 'one' });
      expect(one).toMatchObject({ sided: 'one', bounds: { high: null } });
      expect(ask(failures, 0.9, { sided: 'two' }).bounds.low).toBeCloseTo(one.bounds.low, 9);
    }
    expect(ask(0, 0.9)).toEqual(ask(0, 0.9, { sided: 'one' }));
    expect(ask(1, 0.9)).toEqual(ask(1, 0.9, { sided: 'two' }));
  });

  it('refuses when nothing has been driven', () => {
    expect(refused(distanceBetweenFailures({ distance: 0, failures: 0, stoppedAt: 'distance' })).says).toBe(
      'Nothing has been driven yet, so there is nothing to count.',
    );
  });

  it('throws on nonsense', () => {
    const ask = (distance: number, failures: number) => () =>
      distanceBetweenFailures({ distance, failures, stoppedAt: 'failure' });
    expect(ask(-1, 1)).toThrow('distanceBetweenFailures: distance must be');
    expect(ask(10, 1.5)).toThrow('distanceBetweenFailures: failures must be a whole number');
    expect(ask(10, 0)).toThrow('counting cannot stop at a failure when there was none');
  });
});
