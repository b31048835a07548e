import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, refused } from '../fixtures';
import { anyField, CAUSES, FIELD, stretch } from './fixtures';
import { stopsAlong } from './stops-along';

describe('stopsAlong', () => {
  it('follows five starters by hand', () => {
    const { starts, marks } = answered(stopsAlong(FIELD, CAUSES));
    expect(starts).toBe(5);
    expect(marks.map(({ distance }) => distance)).toEqual([10, 20, 30, 40, 50, 60, 70, 80]);
    const at = (distance: number) => marks.find((mark) => mark.distance === distance);
    const sharesAt = (distance: number) => at(distance)?.causes.map(({ share }) => Number(share.toFixed(6)));
    expect(sharesAt(10)).toEqual([0, 0, 0]);
    // At 20 two of five stop, one by each cause; at 60 one of the two still watched, so half of the 0.6 that were left.
    expect(sharesAt(20)).toEqual([0.2, 0.2, 0]);
    expect(sharesAt(50)).toEqual([0.2, 0.2, 0]);
    expect(sharesAt(60)).toEqual([0.5, 0.2, 0]);
    expect(at(60)?.going).toBeCloseTo(0.3, 12);
    expect(marks.map(({ running }) => running)).toEqual([5, 5, 3, 3, 3, 2, 1, 1]);
  });

  it('draws a curve of each cause that rises only where it stopped somebody', () => {
    const { curves, furthest } = answered(stopsAlong(FIELD, CAUSES));
    expect(furthest).toBe(80);
    const drawn = curves.map(({ cause, steps }) => [
      cause,
      steps.map(({ distance, share }) => [distance, Number(share.toFixed(6))]),
    ]);
    expect(drawn).toEqual([
      [
        'mechanical',
        [
          [20, 0.2],
          [60, 0.5],
        ],
      ],
      ['off', [[20, 0.2]]],
      ['time', []],
    ]);
  });

  it('shows a field that nothing stopped', () => {
    const { marks } = answered(stopsAlong([stretch(33), stretch(33)], CAUSES));
    expect(marks.at(-1)).toEqual({
      distance: 33,
      running: 2,
      going: 1,
      causes: CAUSES.map((cause) => ({ cause, share: 0, bounds: null })),
    });
  });

  it('has nothing to show of no start', () => {
    expect(refused(stopsAlong([stretch(80, 'off', 40)], CAUSES)).reason).toBe('noLives');
  });

  it('shares out the whole at every mark, and no share ever falls', () => {
    fc.assert(
      fc.property(anyField, (field) => {
        const along = stopsAlong(field, CAUSES);
        expect(along.ok).toBe(field.some(({ from }) => from === 0));
        if (!along.ok) return;
        let before = 0;
        for (const { going, causes } of along.marks) {
          const stopped = causes.reduce((sum, { share }) => sum + share, 0);
          expect(going + stopped).toBeCloseTo(1, 9);
          expect(stopped).toBeGreaterThanOrEqual(before - 1e-12);
          before = stopped;
        }
        const last = along.marks.at(-1)?.causes.map(({ share }) => share);
        expect(along.curves.map(({ steps }) => steps.at(-1)?.share ?? 0)).toEqual(last);
      }),
    );
  });
});
