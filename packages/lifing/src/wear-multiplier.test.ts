import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wearMultiplier } from './wear-multiplier';

describe('wearMultiplier', () => {
  const twoFactors = { dust: 2000, rough: 1500 };

  it('is 1000 without conditions, and for conditions the card does not name', () => {
    expect(wearMultiplier({ conditionFactors: twoFactors, combineConditions: 'sum' }, {})).toBe(1000);
    expect(wearMultiplier({ conditionFactors: twoFactors, combineConditions: 'sum' }, { night: 1000 })).toBe(
      1000,
    );
  });

  it('takes the largest excess or their sum, as the card says', () => {
    // dust: 600 × (2000 − 1000) / 1000 = 600; rough: 800 × (1500 − 1000) / 1000 = 400
    const conditions = { dust: 600, rough: 800 };
    expect(wearMultiplier({ conditionFactors: twoFactors, combineConditions: 'largest' }, conditions)).toBe(
      1600,
    );
    expect(wearMultiplier({ conditionFactors: twoFactors, combineConditions: 'sum' }, conditions)).toBe(2000);
  });

  it('rounds half up, once, after adding', () => {
    // 1 × 500 / 1000 = 0.5 → 1
    expect(
      wearMultiplier({ conditionFactors: { dust: 1500 }, combineConditions: 'largest' }, { dust: 1 }),
    ).toBe(1001);
    // 0.4 + 0.4 = 0.8 → 1, where rounding each first would give 0
    const factors = { dust: 1400, rough: 1400 };
    expect(
      wearMultiplier({ conditionFactors: factors, combineConditions: 'sum' }, { dust: 1, rough: 1 }),
    ).toBe(1001);
    // −0.5 → 0 (half up is towards the greater wear)
    expect(wearMultiplier({ conditionFactors: { water: 500 }, combineConditions: 'sum' }, { water: 1 })).toBe(
      1000,
    );
  });

  it('never passes three times, nor a quarter', () => {
    const all = { dust: 1000, rough: 1000 };
    expect(
      wearMultiplier({ conditionFactors: { dust: 2800, rough: 2900 }, combineConditions: 'sum' }, all),
    ).toBe(3000);
    expect(wearMultiplier({ conditionFactors: { dust: 0 }, combineConditions: 'largest' }, all)).toBe(250);
  });

  it('lets a condition slow wear down where its factor says so', () => {
    const card = { conditionFactors: { water: 700 }, combineConditions: 'largest' as const };
    expect(wearMultiplier(card, { water: 1000 })).toBe(700);
    expect(wearMultiplier(card, { water: 500 })).toBe(850);
  });

  it('with the largest excess lets the condition that wears more decide', () => {
    const card = { conditionFactors: { water: 700, rough: 1200 }, combineConditions: 'largest' as const };
    expect(wearMultiplier(card, { water: 1000, rough: 1000 })).toBe(1200);
  });

  it('is never below 1000 unless a factor is, and never falls when a level rises', () => {
    const level = fc.integer({ min: 0, max: 1000 });
    const factor = fc.integer({ min: 1000, max: 4000 });
    const combine = fc.constantFrom('largest' as const, 'sum' as const);
    fc.assert(
      fc.property(
        level,
        level,
        level,
        factor,
        factor,
        combine,
        (low, high, other, dust, rough, combineConditions) => {
          const card = { conditionFactors: { dust, rough }, combineConditions };
          const better = wearMultiplier(card, { dust: Math.min(low, high), rough: other });
          const worse = wearMultiplier(card, { dust: Math.max(low, high), rough: other });
          expect(better).toBeGreaterThanOrEqual(1000);
          expect(worse).toBeGreaterThanOrEqual(better);
          expect(worse).toBeLessThanOrEqual(3000);
        },
      ),
    );
  });

  it('refuses levels and factors that cannot be', () => {
    const card = { conditionFactors: { dust: 2000 }, combineConditions: 'largest' as const };
    expect(() => wearMultiplier(card, { dust: 1001 })).toThrow(/wearMultiplier: the level of dust/);
    expect(() => wearMultiplier(card, { dust: 0.5 })).toThrow(/wearMultiplier: the level of dust/);
    expect(() =>
      wearMultiplier({ conditionFactors: { dust: -1 }, combineConditions: 'sum' }, { dust: 1 }),
    ).toThrow(/wearMultiplier: the factor of dust/);
  });
});
