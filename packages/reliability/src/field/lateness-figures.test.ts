import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { latenessByService, type TimedLeave } from './lateness-figures';

const leave = (
  carNumber: string,
  serviceId: string,
  lateMinutes: number,
  overMinutes: number | null = 0,
): TimedLeave => ({
  carNumber,
  serviceId,
  lateMinutes,
  overMinutes,
});

describe('latenessByService', () => {
  it('counts by hand', () => {
    const { all, services, cars } = latenessByService(
      [
        leave('1', 'A', 0),
        leave('2', 'A', 3, 3),
        leave('3', 'A', 16, null),
        leave('1', 'B', 4, 0),
        leave('2', 'B', 15, 6),
        leave('4', 'B', -2),
      ],
      15,
    );
    // Late 3, 4, 15 and 16, so the median is between 4 and 15; fifteen is the maximum itself and not beyond it.
    expect(all).toMatchObject({
      leaves: 6,
      late: { count: 4, medianMinutes: 9.5, worstMinutes: 16, share: { share: 4 / 6 } },
      overran: { count: 2, medianMinutes: 4.5, worstMinutes: 6, notKnown: 1 },
      beyond: { count: 1, share: { share: 1 / 6 } },
    });
    expect(services).toMatchObject([
      {
        serviceId: 'A',
        leaves: 3,
        late: { count: 2, medianMinutes: 9.5, worstMinutes: 16 },
        beyond: { count: 1 },
      },
      {
        serviceId: 'B',
        leaves: 3,
        late: { count: 2, medianMinutes: 9.5, worstMinutes: 15 },
        beyond: { count: 0 },
      },
    ]);
    expect(cars).toEqual({ had: 3, of: 4 });
  });

  it('says nothing of nothing', () => {
    expect(latenessByService([], 15)).toEqual({
      all: {
        leaves: 0,
        late: { count: 0, medianMinutes: null, worstMinutes: null, share: null },
        overran: { count: 0, medianMinutes: null, worstMinutes: null, notKnown: 0 },
        beyond: { count: 0, share: null },
      },
      services: [],
      cars: { had: 0, of: 0 },
    });
  });

  it('has every leave in one service, and a median between the least and the worst', () => {
    const leaves = fc.array(
      fc
        .tuple(fc.constantFrom('1', '2', '3'), fc.constantFrom('A', 'B'), fc.integer({ min: -5, max: 40 }))
        .map(([car, service, late]) => leave(car, service, late)),
    );
    fc.assert(
      fc.property(leaves, fc.integer({ min: 0, max: 30 }), (some, maximum) => {
        const { all, services } = latenessByService(some, maximum);
        const sum = (counts: number[]) => counts.reduce((total, count) => total + count, 0);
        expect(sum(services.map((one) => one.leaves))).toBe(all.leaves);
        expect(sum(services.map((one) => one.beyond.count))).toBe(all.beyond.count);
        expect(all.late.medianMinutes ?? 1).toBeGreaterThanOrEqual(1);
        expect(all.late.medianMinutes ?? 0).toBeLessThanOrEqual(all.late.worstMinutes ?? 0);
      }),
    );
  });
});
