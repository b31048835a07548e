import { describe, expect, it } from 'vitest';
import { dueAt } from './due-at';
import { goodItinerary, TWO_LEGS } from './fixtures';
import { positionIn } from './position-in';
import { positionsOf } from './positions-of';

const twoLegs = goodItinerary(TWO_LEGS);

describe('positionsOf', () => {
  it('holds the first position until another is set', () => {
    const positions = positionsOf({ startPosition: 12, positionsBySection: { 3: 9 } });
    expect([1, 2, 3, 4].map((section) => positionIn(positions, section))).toEqual([12, 12, 9, 9]);
  });

  it('never takes another position for the first section', () => {
    expect(positionsOf({ startPosition: 12, positionsBySection: { 0: 3, 1: 4 } })).toEqual(
      new Map([[1, 12]]),
    );
  });

  it('times each section by its own position', () => {
    const sections = twoLegs.points.map(({ section }) => section);
    const last = Math.max(...sections);
    expect(last).toBeGreaterThan(1);
    const positions = positionsOf({ startPosition: 12, positionsBySection: { [last]: 3 } });
    sections.forEach((section, index) => {
      expect(dueAt(twoLegs, index, positions)).toBe(dueAt(twoLegs, index, section === last ? 3 : 12));
    });
  });
});
