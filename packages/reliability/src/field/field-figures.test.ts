import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldFigures } from './field-figures';
import { anyField, CAUSES, FIELD, stretch } from './fixtures';

describe('fieldFigures', () => {
  it('puts events together and keeps their order for the trend', () => {
    const rough = Array.from({ length: 10 }, (_, index) => stretch(100, index < 6 ? 'off' : null));
    const easy = Array.from({ length: 10 }, () => stretch(100));
    expect(fieldFigures([rough, easy], CAUSES)).toMatchObject({
      rates: { distance: 2000, all: { stops: 6, perThousand: { rate: 3 } } },
      perEvent: [
        { stops: 6, perThousand: { rate: 6 } },
        { stops: 0, perThousand: { rate: 0 } },
      ],
      along: { starts: 20 },
      growth: {
        all: { direction: 'improving' },
        causes: [{ growth: { ok: false } }, { cause: 'off', growth: { direction: 'improving' } }, {}],
      },
    });
    expect(fieldFigures([easy, rough], CAUSES).growth.all).toMatchObject({ direction: 'worsening' });
  });

  it('is useful from the first event, and empty before', () => {
    const first = fieldFigures([FIELD], CAUSES);
    expect(first.rates.all.stops).toBe(3);
    expect(first.growth.all).toMatchObject({ ok: false, reason: 'tooFewEvents' });
    expect(fieldFigures([], CAUSES)).toMatchObject({ rates: { distance: 0 }, along: null });
  });

  it('answers for any events without a surprise', () => {
    fc.assert(
      fc.property(fc.array(anyField, { maxLength: 6 }), (events) => {
        const { rates, growth } = fieldFigures(events, CAUSES);
        expect(rates.all.stops).toBe(events.flat().filter(({ cause }) => cause !== null).length);
        expect(growth.causes.map(({ cause }) => cause)).toEqual(CAUSES);
        if (growth.all.ok) expect(growth.all.failures).toBe(rates.all.stops);
      }),
    );
  });
});
