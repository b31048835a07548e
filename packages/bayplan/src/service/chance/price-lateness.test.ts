import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LatenessRule, penaltyFor, priceLateness, pricePlan } from './price-lateness';
import type { CarOutlook } from './simulate-plan';

const RULE: LatenessRule = {
  unitsPerMinute: 60,
  secondsPerMinute: 10,
  maximumMinutes: 15,
  overMaximumSeconds: 1800,
};

function carOf(...finishes: readonly number[]): CarOutlook {
  return {
    car: 'car',
    outTime: 1200,
    finishes: Float64Array.from(finishes).sort(),
    spare: { mean: 0, likelyWorst: 0 },
    lateChance: 0,
    meanLate: 0,
    tooLateChance: 0,
  };
}

describe('penaltyFor', () => {
  it('climbs by the minute to the maximum and falls off the cliff after it', () => {
    expect([0, 1, 15, 16, 40].map((minutes) => penaltyFor(minutes, RULE))).toEqual([0, 10, 150, 1800, 1800]);
    expect(penaltyFor(40, { ...RULE, maximumMinutes: null })).toBe(400);
  });

  it('refuses a rule that is none', () => {
    expect(() => penaltyFor(1, { ...RULE, secondsPerMinute: -10 })).toThrow('must be from 0');
    expect(() => priceLateness(carOf(1), { ...RULE, unitsPerMinute: 0 })).toThrow('must have length');
  });
});

describe('priceLateness', () => {
  it('counts whole minutes only, and the cliff with its chance', () => {
    // On time to the last second of the minute; 1 minute; 15 minutes 59; 16 minutes, which is out.
    const { seconds, withinSeconds, overChance } = priceLateness(carOf(1259, 1260, 2159, 2160), RULE);
    expect(withinSeconds).toBeCloseTo((0 + 10 + 150) / 4, 9);
    expect(overChance).toBe(0.25);
    expect(seconds).toBeCloseTo(40 + 450, 9);
  });

  it('is the mean of the penalties run by run', () => {
    const finishes = fc.array(fc.integer({ min: 0, max: 4000 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(finishes, fc.option(fc.nat(30)), (ends, maximumMinutes) => {
        const rule = { ...RULE, maximumMinutes };
        const each = ends.map((end) => penaltyFor(Math.max(0, Math.floor((end - 1200) / 60)), rule));
        const mean = each.reduce((sum, one) => sum + one, 0) / each.length;
        expect(priceLateness(carOf(...ends), rule).seconds).toBeCloseTo(mean, 6);
      }),
    );
  });
});

describe('pricePlan', () => {
  it('adds the cars up, each under its own rule', () => {
    const cars = [carOf(1260), { ...carOf(1320), car: 'other' }];
    const outlook = { runs: 1, cars, anyLateChance: 1, waitedTooLongChance: 0 };
    const free = { ...RULE, secondsPerMinute: 0 };
    expect(pricePlan(outlook, () => RULE)).toBeCloseTo(10 + 20, 9);
    expect(pricePlan(outlook, (car) => (car === 'other' ? free : RULE))).toBeCloseTo(10, 9);
  });
});
