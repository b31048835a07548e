import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dueAt } from './due-at';
import { anyItinerary, goodItinerary, TWO_LEGS } from './fixtures';
import type { Itinerary } from './model';

const twoLegs = goodItinerary(TWO_LEGS);

describe('dueAt', () => {
  it('is the printed time for position 1 and a minute later for each position after it', () => {
    const first = twoLegs.points[3]?.firstCarAt ?? 0;
    expect([1, 2, 3, 40].map((position) => dueAt(twoLegs, 3, position) - first)).toEqual([
      0,
      60,
      120,
      39 * 60,
    ]);
  });

  it('follows the block each position falls in, in the section of the point only', () => {
    const blocks: Itinerary = {
      ...twoLegs,
      startBlocks: [
        { section: 1, fromPosition: 1, intervalSeconds: 120 },
        { section: 1, fromPosition: 4, intervalSeconds: 60 },
        { section: 2, fromPosition: 1, intervalSeconds: 30 },
      ],
    };
    const lastOfSectionOne = twoLegs.points.findLastIndex((point) => point.section === 1);
    const late = (index: number, position: number) =>
      dueAt(blocks, index, position) - (blocks.points[index]?.firstCarAt ?? 0);
    // Positions 2 and 3 follow at 120 s, from 4 on at 60 s.
    expect([1, 2, 3, 4, 5].map((position) => late(0, position))).toEqual([0, 120, 240, 300, 360]);
    expect(late(lastOfSectionOne, 5)).toBe(360);
    expect(late(lastOfSectionOne + 1, 5)).toBe(120);
    // Section 3 names no interval.
    expect(late(blocks.points.length - 1, 5)).toBeGreaterThanOrEqual(240);
    expect(
      late(
        twoLegs.points.findIndex((point) => point.section === 3),
        5,
      ),
    ).toBe(240);
  });

  it('rises with the position by exactly the interval of its block, at every point of a section alike', () => {
    fc.assert(
      fc.property(anyItinerary, fc.nat(), fc.integer({ min: 1, max: 60 }), (itinerary, at, position) => {
        const index = at % itinerary.points.length;
        const section = itinerary.points[index]?.section;
        const block = itinerary.startBlocks.findLast(
          (one) => one.section === section && one.fromPosition <= position + 1,
        );
        const step = dueAt(itinerary, index, position + 1) - dueAt(itinerary, index, position);
        expect(step).toBe(block?.intervalSeconds);
        expect(step).toBeGreaterThan(0);
        itinerary.points.forEach((point, other) => {
          if (point.section !== section) return;
          const lag = dueAt(itinerary, other, position) - point.firstCarAt;
          expect(lag).toBe(dueAt(itinerary, index, position) - (itinerary.points[index]?.firstCarAt ?? 0));
        });
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('throws a sentence on a position or a point that is none', () => {
    expect(() => dueAt(twoLegs, 0, 0)).toThrow('dueAt: a start position is a whole number from 1, not 0');
    expect(() => dueAt(twoLegs, 0, 1.5)).toThrow('dueAt: a start position');
    expect(() => dueAt(twoLegs, 999, 1)).toThrow(/^dueAt: 999 is no point/);
  });
});
