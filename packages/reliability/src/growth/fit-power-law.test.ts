import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, frozen, HANDBOOK_FAILURES, NIST_REPAIRS, refused, relativeError } from '../fixtures';
import { fitPowerLaw } from './fit-power-law';
import type { EventHistory } from './read-history';

const NIST: EventHistory = { stoppedAt: 'distance', events: NIST_REPAIRS, end: 1500 };
const HANDBOOK: EventHistory = { stoppedAt: 'distance', events: HANDBOOK_FAILURES, end: 300 };

describe('fitPowerLaw on NIST/SEMATECH e-Handbook 8.4.5.2, case study 1', () => {
  const fit = answered(fitPowerLaw(frozen(NIST), { level: 0.8 }));

  it('has the printed digits of the corrected fit', () => {
    expect((1 - fit.corrected.shape).toFixed(6)).toBe('0.516494');
    expect(fit.corrected.distanceNow.toFixed(3)).toBe('310.234');
    expect(relativeError(fit.corrected.shape, 0.483505979)).toBeLessThan(1e-8);
    expect(relativeError(fit.corrected.rate, 0.2913003)).toBeLessThan(1e-6);
    expect(relativeError(fit.corrected.distanceNow, 310.234012)).toBeLessThan(1e-8);
  });

  it('has the printed approximate 80 % bounds of the distance between failures now', () => {
    expect(fit.distanceNowBounds.approximate?.low.toFixed(4)).toBe('157.7138');
    expect(fit.distanceNowBounds.approximate?.high?.toFixed(4)).toBe('548.5566');
  });

  it('has the plain maximum-likelihood fit and the exact bounds of the shape', () => {
    // Computed with R from b = r / sum ln(T/t) and b qchisq(a, 2r) / 2r.
    expect(relativeError(fit.maximumLikelihood.shape, 0.537228866)).toBeLessThan(2e-9);
    expect(relativeError(fit.maximumLikelihood.rate, 0.196658216)).toBeLessThan(2e-9);
    expect(relativeError(fit.maximumLikelihood.intensityNow, 0.00358152577)).toBeLessThan(2e-9);
    expect(relativeError(fit.maximumLikelihood.distanceNow, 279.210611)).toBeLessThan(2e-9);
    const { shapeBounds } = answered(fitPowerLaw(NIST, { level: 0.9 }));
    expect(relativeError(shapeBounds.low, 0.291468455)).toBeLessThan(2e-9);
    expect(relativeError(shapeBounds.high, 0.843729561)).toBeLessThan(2e-9);
  });

  it('says what a sentence needs: every 150 so far, every 310 now', () => {
    expect(fit.growth).toMatchObject({ direction: 'improving', distanceSoFar: 150 });
    expect(fit.growth.factor).toBeCloseTo(310.234012 / 150, 8);
  });
});

describe('fitPowerLaw on MIL-HDBK-189 (1981) appendix C', () => {
  const fit = answered(fitPowerLaw(HANDBOOK, { level: 0.9 }));

  it('has its estimates', () => {
    expect(relativeError(fit.maximumLikelihood.shape, 0.716339262)).toBeLessThan(2e-9);
    expect(relativeError(fit.maximumLikelihood.rate, 0.453841861)).toBeLessThan(2e-9);
    expect(relativeError(fit.maximumLikelihood.intensityNow, 0.0644705336)).toBeLessThan(2e-9);
    expect(relativeError(fit.maximumLikelihood.distanceNow, 15.510962)).toBeLessThan(4e-9);
    expect(relativeError(fit.corrected.shape, 0.689808179)).toBeLessThan(2e-9);
    expect(relativeError(fit.cramerVonMises, 0.0910611224)).toBeLessThan(1e-9);
  });

  it('has the exact bounds of the shape, and Crow’s tabled factors for the distance now', () => {
    expect(relativeError(fit.shapeBounds.low, 0.505632288)).toBeLessThan(2e-9);
    expect(relativeError(fit.shapeBounds.high, 0.957151512)).toBeLessThan(2e-9);
    const { low, high } = fit.distanceNowBounds.exact;
    expect(relativeError(low / fit.maximumLikelihood.distanceNow, 0.6361467)).toBeLessThan(1e-7);
    expect(relativeError((high ?? 0) / fit.maximumLikelihood.distanceNow, 1.6817864)).toBeLessThan(1e-7);
  });

  it('bounds the distance now when the record stops at a failure', () => {
    const stopped = answered(
      fitPowerLaw({ stoppedAt: 'failure', events: HANDBOOK_FAILURES }, { level: 0.9 }),
    );
    const { exact, approximate } = stopped.distanceNowBounds;
    // Computed with SciPy 1.17 by adaptive quadrature over the density of a gamma variable.
    expect(relativeError(exact.low / stopped.maximumLikelihood.distanceNow, 0.6912017838)).toBeLessThan(1e-9);
    expect(
      relativeError((exact.high ?? 0) / stopped.maximumLikelihood.distanceNow, 1.720406768),
    ).toBeLessThan(1e-9);
    expect(approximate).toBeNull();
  });
});

/** Whether the shape stays below 100: beyond, at 1000 of distance, the rate can't be written down. */
function isSpread(events: readonly number[]): boolean {
  const last = Math.max(...events);
  return events.reduce((sum, event) => sum + Math.log(last / event), 0) > events.length / 100;
}

const someHistory: fc.Arbitrary<EventHistory> = fc
  .tuple(
    fc.array(fc.integer({ min: 1, max: 999 }), { minLength: 3, maxLength: 25 }),
    fc.constantFrom('distance', 'failure'),
  )
  .filter(([events]) => isSpread(events))
  .map(([events, stoppedAt]) =>
    stoppedAt === 'distance' ? { stoppedAt, events, end: 1000 } : { stoppedAt, events },
  );

function scaled(history: EventHistory, factor: number): EventHistory {
  const events = history.events.map((event) => event * factor);
  return history.stoppedAt === 'distance'
    ? { ...history, events, end: history.end * factor }
    : { ...history, events };
}

describe('fitPowerLaw', () => {
  it('does not depend on the order of the events; distances follow the unit, the shape does not', () => {
    fc.assert(
      fc.property(someHistory, (history) => {
        const fit = answered(fitPowerLaw(frozen(history)));
        const turned = answered(fitPowerLaw({ ...history, events: history.events.toReversed() }));
        expect(turned).toEqual(fit);
        const inMiles = answered(fitPowerLaw(scaled(history, 1 / 1.609344)));
        expect(inMiles.corrected.shape / fit.corrected.shape).toBeCloseTo(1, 10);
        expect(inMiles.growth.distanceNow * 1.609344).toBeCloseTo(fit.growth.distanceNow, 6);
        expect(inMiles.distanceNowBounds.exact.low * 1.609344).toBeCloseTo(
          fit.distanceNowBounds.exact.low,
          6,
        );
      }),
      { numRuns: 50 },
    );
  });

  it('expects as many failures at the end as there were, at the shape where the likelihood is highest', () => {
    fc.assert(
      fc.property(someHistory, (history) => {
        const { maximumLikelihood, failures, end } = answered(fitPowerLaw(history));
        expect(maximumLikelihood.rate * end ** maximumLikelihood.shape).toBeCloseTo(failures, 8);
        const likelihood = (shape: number) =>
          history.events.reduce((sum, event) => sum + Math.log(shape) + shape * Math.log(event / end), 0);
        for (const factor of [0.99, 1.01]) {
          expect(likelihood(maximumLikelihood.shape * factor)).toBeLessThan(
            likelihood(maximumLikelihood.shape),
          );
        }
      }),
    );
  });

  it('has bounds that widen with the level', () => {
    fc.assert(
      fc.property(someHistory, (history) => {
        const narrow = answered(fitPowerLaw(history, { level: 0.5 }));
        const wide = answered(fitPowerLaw(history, { level: 0.95 }));
        for (const pick of [
          (fit: typeof narrow) => fit.shapeBounds,
          (fit: typeof narrow) => fit.distanceNowBounds.exact,
        ]) {
          expect(pick(wide).low).toBeLessThan(pick(narrow).low);
          expect(pick(narrow).low).toBeLessThan(pick(narrow).high ?? Infinity);
          expect(pick(wide).high ?? Infinity).toBeGreaterThan(pick(narrow).high ?? 0);
        }
      }),
      { numRuns: 50 },
    );
  });

  it('says improving, worsening or neither as the bounds of the shape do', () => {
    const early = [1, 2, 4, 7, 11, 20, 33, 60, 110, 300];
    const late = early.map((event) => 1000 - event);
    const steady = Array.from({ length: 10 }, (_, index) => 50 + 100 * index);
    const direction = (events: number[]) =>
      answered(fitPowerLaw({ stoppedAt: 'distance', events, end: 1000 })).growth.direction;
    expect([early, late, steady].map(direction)).toEqual(['improving', 'worsening', 'noTrend']);
  });

  it('refuses what cannot be read', () => {
    expect(refused(fitPowerLaw({ stoppedAt: 'distance', events: [5, 9], end: 10 })).says).toBe(
      'Only 2 failures are known; growth needs at least 3.',
    );
    expect(refused(fitPowerLaw({ stoppedAt: 'failure', events: [10, 10, 10] })).reason).toBe('noSpread');
    // A shape of 3000: 999 to that power is beyond every number.
    expect(refused(fitPowerLaw({ stoppedAt: 'failure', events: [998, 999, 999] })).reason).toBe('noSpread');
    expect(refused(fitPowerLaw({ stoppedAt: 'failure', events: [0.1, 0.1001, 0.1001] })).reason).toBe(
      'noSpread',
    );
  });

  it('throws on nonsense', () => {
    const ask = (events: number[]) => () => fitPowerLaw({ stoppedAt: 'distance', events, end: 10 });
    expect(ask([1, 2, 11])).toThrow('fitPowerLaw: an event at 11 lies beyond the end at 10.');
    expect(ask([0, 1, 2])).toThrow('fitPowerLaw: an event must be a number above 0, not 0.');
  });
});
