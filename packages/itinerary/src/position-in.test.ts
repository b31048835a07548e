import { describe, expect, it } from 'vitest';
import { dueAt } from './due-at';
import { goodItinerary, TWO_LEGS } from './fixtures';
import type { Itinerary } from './model';
import { positionIn } from './position-in';

describe('positionIn', () => {
  it('holds from the section it was set in until it is set anew', () => {
    const positions = new Map([
      [3, 9],
      [1, 12],
    ]);
    expect([1, 2, 3, 4].map((section) => positionIn(positions, section))).toEqual([12, 12, 9, 9]);
  });

  it('throws a sentence where none is set, or one that is none', () => {
    expect(() => positionIn(new Map([[2, 5]]), 1)).toThrow(/^positionIn: no start position/);
    expect(() => positionIn(new Map([[1, 0]]), 1)).toThrow(/^positionIn: no start position/);
  });
});

describe('dueAt with positions by section', () => {
  const twoLegs = goodItinerary(TWO_LEGS);
  const blocks: Itinerary = {
    ...twoLegs,
    startBlocks: [
      { section: 1, fromPosition: 1, intervalSeconds: 60 },
      { section: 2, fromPosition: 1, intervalSeconds: 120 },
      { section: 2, fromPosition: 6, intervalSeconds: 60 },
      { section: 3, fromPosition: 1, intervalSeconds: 60 },
      { section: 4, fromPosition: 1, intervalSeconds: 60 },
    ],
  };

  it('takes order and interval of the point’s own section', () => {
    const positions = new Map([
      [1, 12],
      [2, 7],
    ]);
    const lag = (id: string) => {
      const index = blocks.points.findIndex((point) => point.id === id);
      return dueAt(blocks, index, positions) - (blocks.points[index]?.firstCarAt ?? 0);
    };
    // Section 1: 11 cars before at 60 s. Section 2: 4 at 120 s, then positions 6 and 7 at 60 s.
    expect([lag('TC0'), lag('TC4A'), lag('TC4B'), lag('TC4D'), lag('TC4E')]).toEqual([
      660, 660, 600, 600, 360,
    ]);
  });

  it('is the same where the order is never set anew', () => {
    blocks.points.forEach((_, index) => {
      expect(dueAt(blocks, index, new Map([[1, 5]]))).toBe(dueAt(blocks, index, 5));
    });
  });
});
