import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { latenessByControl, type TimedArrival } from './lateness-by-control';

const arrival = (
  carNumber: string,
  controlId: string,
  lateMinutes: number,
  lostMinutes: number | null = 0,
  totalMinutes: number | null = 0,
): TimedArrival => ({ carNumber, controlId, lateMinutes, lostMinutes, totalMinutes });

describe('latenessByControl', () => {
  it('counts by hand', () => {
    const { all, controls, cars } = latenessByControl(
      [
        arrival('1', 'TC1', 0),
        arrival('2', 'TC1', 3, 3, 3),
        arrival('3', 'TC1', 16, 16, 16),
        arrival('1', 'TC2', 4, 4, 4),
        arrival('2', 'TC2', 15, 12, 15),
        arrival('4', 'TC2', -2, 0, null),
        arrival('3', 'TC2', 18, null, null),
      ],
      15,
    );
    expect(controls).toMatchObject([
      {
        controlId: 'TC1',
        arrivals: 3,
        late: { count: 2, medianMinutes: 9.5, worstMinutes: 16, share: { share: 2 / 3 } },
        lost: { count: 2, medianMinutes: 9.5, worstMinutes: 16, notKnown: 0 },
        total: { count: 2, worstMinutes: 16, notKnown: 0 },
        beyond: { count: 1 },
      },
      {
        controlId: 'TC2',
        arrivals: 4,
        late: { count: 3, medianMinutes: 15, worstMinutes: 18 },
        lost: { count: 2, medianMinutes: 8, worstMinutes: 12, notKnown: 1 },
        total: { count: 2, medianMinutes: 9.5, worstMinutes: 15, notKnown: 2 },
        // Fifteen is the maximum itself and not beyond it.
        beyond: { count: 1, share: { share: 1 / 4 } },
      },
    ]);
    expect(all).toMatchObject({ arrivals: 7, late: { count: 5 }, beyond: { count: 2 } });
    expect(cars).toEqual({ had: 3, of: 4 });
  });

  it('says nothing of nothing', () => {
    const none = { count: 0, medianMinutes: null, worstMinutes: null };
    expect(latenessByControl([], 15)).toEqual({
      all: {
        arrivals: 0,
        late: { ...none, share: null },
        lost: { ...none, notKnown: 0 },
        total: { ...none, notKnown: 0 },
        beyond: { count: 0, share: null },
      },
      controls: [],
      cars: { had: 0, of: 0 },
    });
  });

  it('has every arrival at one control, and none beyond that was not late', () => {
    const arrivals = fc.array(
      fc
        .tuple(
          fc.constantFrom('1', '2', '3'),
          fc.constantFrom('TC1', 'TC2'),
          fc.integer({ min: -5, max: 40 }),
          fc.option(fc.integer({ min: 0, max: 40 })),
        )
        .map(([car, control, late, lost]) => arrival(car, control, late, lost)),
    );
    fc.assert(
      fc.property(arrivals, fc.integer({ min: 0, max: 30 }), (some, maximum) => {
        const { all, controls } = latenessByControl(some, maximum);
        const sum = (counts: number[]) => counts.reduce((total, count) => total + count, 0);
        expect(sum(controls.map((one) => one.arrivals))).toBe(all.arrivals);
        expect(sum(controls.map((one) => one.lost.count + one.lost.notKnown))).toBe(
          all.lost.count + all.lost.notKnown,
        );
        expect(all.beyond.count).toBeLessThanOrEqual(all.late.count);
        expect(all.lost.count + all.lost.notKnown).toBeLessThanOrEqual(all.arrivals);
      }),
    );
  });
});
