import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deepFreeze } from '../fixtures';
import type { WearReading } from './model';
import { type WearRateQuestion, wearRate } from './wear-rate';

const GROUP = 'front|gravel|medium';

function series(values: number[], own: Partial<WearReading> = {}, step = 24_000): WearReading[] {
  return values.map((value, index) => ({
    group: GROUP,
    position: 'FL',
    part: 'set 1',
    wornMetres: index * step,
    value,
    ...own,
  }));
}

function rate(readings: WearReading[], own: Partial<WearRateQuestion> = {}) {
  return wearRate(
    deepFreeze({
      readings,
      group: GROUP,
      position: 'FL',
      part: 'set 1',
      direction: 'down' as const,
      cardRate: null,
      marginPerMille: 1000,
      aheadMetres: 24_000,
      ...own,
    }),
  );
}

describe('wearRate up to five readings', () => {
  it('one reading and no rate on the card: nothing to go by', () => {
    expect(rate(series([100]))).toEqual({ method: 'none', lossAhead: null, readings: 1 });
  });

  it('one reading: the rate of the card', () => {
    // 6.0 mm on 100 stage km is 1.44 mm on 24: cut upwards.
    expect(rate(series([100]), { cardRate: 60 })).toEqual({ method: 'card', lossAhead: 15, readings: 1 });
  });

  it('the worst loop so far, not the mean', () => {
    expect(rate(series([100, 90, 71, 65]))).toEqual({ method: 'worstLoop', lossAhead: 19, readings: 4 });
  });

  it('the card when it expects more', () => {
    expect(rate(series([100, 95, 90]), { cardRate: 60 })).toMatchObject({ method: 'card', lossAhead: 15 });
    expect(rate(series([100, 80, 70]), { cardRate: 60 })).toMatchObject({
      method: 'worstLoop',
      lossAhead: 20,
    });
  });

  it('times the margin, 1200 per mille unless told otherwise', () => {
    expect(rate(series([100, 90]), { marginPerMille: 1500 })?.lossAhead).toBe(15);
    const { marginPerMille: _left, ...usual } = { ...questionOf(series([100, 90])) };
    expect(wearRate(usual)?.lossAhead).toBe(12);
  });

  it('goes by distance, not by loops', () => {
    const readings = [...series([100, 90]), ...series([81], { wornMetres: 36_000 })];
    // 10 on 24 km, then 9 on 12 km: the short loop was the worse one.
    expect(rate(readings)?.lossAhead).toBe(18);
  });

  it('one axle learns from both sides and from the set before', () => {
    const other = series([90, 60], { position: 'FR' });
    const before = series([100, 75], { part: 'set 0' });
    expect(rate([...series([100, 90]), ...other])?.lossAhead).toBe(30);
    expect(rate([...series([100, 90]), ...before])?.lossAhead).toBe(25);
  });

  it('and never from another axle, surface or compound', () => {
    const foreign = series([100, 10], { group: 'rear|gravel|medium', position: 'RL' });
    expect(rate([...series([100, 90]), ...foreign])?.lossAhead).toBe(10);
  });

  it('a new part makes no loop with the old one', () => {
    const readings = [...series([40]), ...series([100], { part: 'set 2', wornMetres: 24_000 })];
    expect(rate(readings, { part: 'set 2' })).toMatchObject({ method: 'none' });
  });

  it('a reading that grew is no gain to count on', () => {
    expect(rate(series([90, 95]))).toMatchObject({ method: 'worstLoop', lossAhead: 0 });
  });

  it('play that grows is a loss as well', () => {
    expect(rate(series([2, 5, 6]), { direction: 'up' })?.lossAhead).toBe(3);
  });

  it('null when the place was never read on this part', () => {
    expect(rate(series([100, 90]), { position: 'FR' })).toBeNull();
  });
});

function questionOf(readings: WearReading[]): WearRateQuestion {
  return {
    readings,
    group: GROUP,
    position: 'FL',
    part: 'set 1',
    direction: 'down',
    cardRate: null,
    marginPerMille: 1000,
    aheadMetres: 24_000,
  };
}

describe('wearRate from six readings on', () => {
  it('an even loss: the line, without anything on top', () => {
    expect(rate(series([100, 90, 80, 70, 60, 50]))).toEqual({ method: 'line', lossAhead: 10, readings: 6 });
  });

  it('five of them are still too few', () => {
    expect(rate(series([100, 90, 80, 70, 60]))?.method).toBe('worstLoop');
  });

  it('an uneven loss: the far side of the prediction interval, worked by hand', () => {
    /*
     * x in loops 0 … 5, y = 100 91 80 71 60 51: mean x 2.5, mean y 75.5, Sxx 17.5, Sxy −173.5, slope −9.914286,
     * intercept 100.285714; left over −0.285714 0.628571 −0.457143 0.457143 −0.628571 0.285714, squares 1.371429,
     * s = √(1.371429 / 4) = 0.585540. At x = 6: 40.800000; √(1 + 1/6 + 12.25/17.5) = 1.366260;
     * 2.132 × 0.585540 × 1.366260 = 1.705600. 51 − (40.8 − 1.7056) = 11.9056: cut upwards 12.
     */
    expect(rate(series([100, 91, 80, 71, 60, 51]))).toMatchObject({ method: 'line', lossAhead: 12 });
  });

  it('the rate of the card and the margin play no part any more', () => {
    const values = series([100, 90, 80, 70, 60, 50]);
    expect(rate(values, { cardRate: 900, marginPerMille: 3000 })?.lossAhead).toBe(10);
  });

  it('six readings at one distance make no line', () => {
    const same = series([100, 99, 98, 97, 96, 95], {}, 0);
    expect(rate(same, { cardRate: 60 })).toMatchObject({ method: 'card', lossAhead: 15 });
  });

  it('the order of the readings makes no difference, and more ahead never loses less', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 25 }), { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 0, max: 90_000 }),
        fc.integer({ min: 0, max: 60_000 }),
        (losses, ahead, more) => {
          let value = 300;
          const readings = series(losses.map((loss) => (value -= loss)));
          const asked = (aheadMetres: number, order = readings) => rate(order, { aheadMetres, cardRate: 40 });
          expect(asked(ahead, [...readings].reverse())).toEqual(asked(ahead));
          const [near, far] = [asked(ahead)?.lossAhead ?? 0, asked(ahead + more)?.lossAhead ?? 0];
          expect(far).toBeGreaterThanOrEqual(near);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('wearRate', () => {
  it('refuses a negative or broken amount', () => {
    expect(() => rate(series([100]), { aheadMetres: -1 })).toThrow('aheadMetres');
    expect(() => rate(series([9.5]))).toThrow('a value');
    expect(() => rate(series([100], { wornMetres: 0.5 }))).toThrow('wornMetres');
  });
});
