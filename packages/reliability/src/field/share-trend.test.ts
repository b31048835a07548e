import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, refused } from '../fixtures';
import { countedShare } from './counted-share';
import { shareTrend } from './share-trend';

describe('shareTrend', () => {
  it('finds the printed statistic of a table of five rows', () => {
    // Malformation by alcohol, Agresti 2002, Categorical Data Analysis, section 3.4: with equally spaced scores M² = 1.83,
    // P = 0.18. M² there is (n - 1) r² and ours n r², which differ by 1 in 32,574.
    const rows: [number, number][] = [
      [48, 17_066],
      [38, 14_464],
      [5, 788],
      [1, 126],
      [1, 37],
    ];
    const { statistic, pEither, direction } = answered(
      shareTrend(rows.map(([had, not]) => ({ had, of: had + not }))),
    );
    expect(statistic ** 2).toBeCloseTo(1.83, 2);
    expect(pEither).toBeCloseTo(0.18, 2);
    expect(direction).toBe('noTrend');
  });

  it('is the comparison of two shares where there are two events', () => {
    // By hand: 24 of 80 in all, so (18 - 12) / sqrt(0.3 · 0.7 · 20) = 2.9277, with the sign of falling.
    const { statistic, direction } = answered(
      shareTrend([
        { had: 18, of: 40 },
        { had: 6, of: 40 },
      ]),
    );
    expect(statistic).toBeCloseTo(-6 / Math.sqrt(0.21 * 20), 12);
    expect(direction).toBe('improving');
    expect(
      answered(
        shareTrend([
          { had: 6, of: 40 },
          { had: 18, of: 40 },
        ]),
      ).direction,
    ).toBe('worsening');
  });

  it('refuses what the normal curve does not carry', () => {
    expect(
      refused(
        shareTrend([
          { had: 9, of: 20 },
          { had: 0, of: 0 },
        ]),
      ).reason,
    ).toBe('tooFewEvents');
    expect(
      refused(
        shareTrend([
          { had: 4, of: 20 },
          { had: 0, of: 20 },
        ]),
      ).reason,
    ).toBe('tooFewCounted');
    expect(
      refused(
        shareTrend([
          { had: 20, of: 20 },
          { had: 16, of: 20 },
        ]),
      ).reason,
    ).toBe('tooFewCounted');
    expect(() => shareTrend([{ had: 3, of: 2 }])).toThrow(RangeError);
  });

  it('turns its sign with the order of the events', () => {
    const event = fc
      .tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }))
      .map(([had, not]) => ({ had, of: had + not }));
    fc.assert(
      fc.property(fc.array(event, { minLength: 5, maxLength: 12 }), (events) => {
        const forward = answered(shareTrend(events)).statistic;
        expect(answered(shareTrend(events.toReversed())).statistic).toBeCloseTo(-forward, 8);
      }),
    );
  });
});

describe('countedShare', () => {
  // Newcombe 1998, Statistics in Medicine 17:857-872, table I, method 3 (score without continuity correction).
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('finds the printed score bounds of %i of %i', (had, of, low, high) => {
    const bounds = countedShare(had, of)?.bounds;
    expect(bounds?.low).toBeCloseTo(low, 4);
    expect(bounds?.high).toBeCloseTo(high, 4);
  });

  it('stays within the whole, and knows nothing of nothing', () => {
    expect(countedShare(0, 0)).toBeNull();
    expect(countedShare(0, 10)?.bounds.low).toBe(0);
    expect(countedShare(10, 10)?.bounds.high).toBe(1);
    expect(() => countedShare(3, 2)).toThrow(RangeError);
    fc.assert(
      fc.property(fc.nat(200), fc.nat(200), (had, more) => {
        const counted = countedShare(had, had + more);
        if (counted === null) return;
        expect(counted.bounds.low).toBeGreaterThanOrEqual(0);
        expect(counted.bounds.low).toBeLessThanOrEqual(counted.share);
        expect(counted.bounds.high).toBeGreaterThanOrEqual(counted.share);
        expect(counted.bounds.high).toBeLessThanOrEqual(1);
      }),
    );
  });
});
