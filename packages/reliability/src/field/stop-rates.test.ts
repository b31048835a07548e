import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distanceDriven } from './field-stretch';
import { anyField, CAUSES, FIELD, stretch } from './fixtures';
import { stopRates } from './stop-rates';

describe('stopRates', () => {
  it('counts by hand: 270 km, two mechanical, one off', () => {
    const rates = stopRates(FIELD, CAUSES, { level: 0.9 });
    // 80 + 50 + 20 + 40 + 20 + 60.
    expect(rates.distance).toBe(270);
    expect(rates.causes.map(({ cause, stops, unsure }) => [cause, stops, unsure])).toEqual([
      ['mechanical', 2, 1],
      ['off', 1, 0],
      ['time', 0, 0],
    ]);
    // Factors on the mean for two failures at 90 %: NIST/SEMATECH e-Handbook 8.4.5.1; digits computed with R.
    const mechanical = rates.causes[0]?.perThousand;
    expect(mechanical?.rate).toBeCloseTo(2000 / 270, 10);
    expect(mechanical?.bounds.low).toBeCloseTo(2000 / 270 / 5.6280715, 5);
    expect(mechanical?.bounds.high).toBeCloseTo(2000 / 270 / 0.3176724, 5);
  });

  it('says of a cause that was never seen how often it could be', () => {
    // No failure in 1000: one-sided at 90 % at least 434.294482 between two (the same table), two-sided so at 80 %.
    const { all } = stopRates([stretch(1000)], CAUSES, { level: 0.8 });
    expect(all.perThousand).toMatchObject({ rate: 0, bounds: { low: 0 } });
    expect(all.perThousand?.bounds.high).toBeCloseTo(1000 / 434.294482, 8);
  });

  it('has no rate where nothing was driven', () => {
    expect(stopRates([stretch(0, 'off')], CAUSES).all).toEqual({ stops: 1, unsure: 0, perThousand: null });
    expect(stopRates([], CAUSES).all.stops).toBe(0);
  });

  it('refuses a cause it was not asked for', () => {
    expect(() => stopRates([stretch(1, 'fuel')], CAUSES)).toThrow('“fuel” is not among the causes');
  });

  it('adds up: causes to all stops, stretches to the distance driven; bounds hold the rate', () => {
    fc.assert(
      fc.property(anyField, (field) => {
        const { all, causes, distance } = stopRates(field, CAUSES);
        expect(causes.reduce((sum, { stops }) => sum + stops, 0)).toBe(all.stops);
        expect(causes.reduce((sum, { unsure }) => sum + unsure, 0)).toBe(all.unsure);
        expect(all.stops).toBe(field.filter(({ cause }) => cause !== null).length);
        expect(distance).toBe(distanceDriven(field));
        for (const { perThousand } of causes) {
          if (perThousand === null) continue;
          expect(perThousand.bounds.low).toBeLessThanOrEqual(perThousand.rate);
          expect(perThousand.bounds.high).toBeGreaterThan(perThousand.rate);
        }
      }),
    );
  });
});
