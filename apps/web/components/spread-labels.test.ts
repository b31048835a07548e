import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { spreadLabels } from './spread-labels';

const ROOM = { apart: 20, top: 0, bottom: 200 };

it('leaves labels alone that do not meet, and keeps their order', () => {
  expect(spreadLabels([150, 10, 90], ROOM)).toEqual([150, 10, 90]);
});

it('pushes those apart that meet, downwards, and upwards from the bottom', () => {
  expect(spreadLabels([50, 52], ROOM)).toEqual([50, 70]);
  expect(spreadLabels([200, 200, 199], ROOM)).toEqual([180, 200, 160]);
});

it('never lets two meet while there is room', () => {
  const heights = fc.array(fc.integer({ min: -50, max: 250 }), { minLength: 1, maxLength: 10 });
  fc.assert(
    fc.property(heights, (wanted) => {
      const placed = spreadLabels(wanted, ROOM).sort((one, other) => one - other);
      expect(placed[0]).toBeGreaterThanOrEqual(ROOM.top);
      expect(placed.at(-1)).toBeLessThanOrEqual(ROOM.bottom);
      for (const [index, height] of placed.slice(1).entries())
        expect(height - (placed[index] ?? 0)).toBeGreaterThanOrEqual(ROOM.apart);
    }),
  );
});
