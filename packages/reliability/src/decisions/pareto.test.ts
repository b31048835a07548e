import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, frozen, refused } from '../fixtures';
import { pareto } from './pareto';

function ofOne(count: number, total: number) {
  const causes = [...new Array(count).fill('seen'), ...new Array(total - count).fill('other')];
  const row = answered(pareto(causes)).rows.find(({ cause }) => cause === 'seen');
  if (!row) throw new Error('The cause is missing.');
  return row;
}

describe('pareto', () => {
  // Score intervals printed in Newcombe 1998, Statistics in Medicine 17:857-872, table I.
  it.each([
    [81, 263, '0.2553', '0.3662'],
    [15, 148, '0.0624', '0.1605'],
    [1, 29, '0.0061', '0.1718'],
  ])('bounds the share of %i in %i as published', (count, total, low, high) => {
    const { bounds } = ofOne(count, total);
    expect(bounds.low.toFixed(4)).toBe(low);
    expect(bounds.high.toFixed(4)).toBe(high);
  });

  it('lists the most frequent first, equal ones by name, and sums up', () => {
    const { total, rows } = answered(
      pareto(frozen(['gearbox', 'brakes', 'electrics', 'brakes', 'electrics', 'tyres', 'electrics'])),
    );
    expect(total).toBe(7);
    expect(rows.map(({ cause, count }) => [cause, count])).toEqual([
      ['electrics', 3],
      ['brakes', 2],
      ['gearbox', 1],
      ['tyres', 1],
    ]);
    expect(rows.map(({ shareSoFar }) => shareSoFar)).toEqual([3 / 7, 5 / 7, 6 / 7, 1]);
  });

  it('has shares that make 1, within bounds that widen with the level', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('a', 'b', 'c', 'd'), { minLength: 1, maxLength: 60 }),
        (causes) => {
          const narrow = answered(pareto(causes, { level: 0.5 })).rows;
          const wide = answered(pareto(causes.toReversed(), { level: 0.95 })).rows;
          expect(narrow.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
          for (const [index, { share, bounds, cause }] of narrow.entries()) {
            const wider = wide[index];
            expect(wider?.cause).toBe(cause);
            const ends = [0, wider?.bounds.low, bounds.low, share, bounds.high, wider?.bounds.high, 1].map(
              Number,
            );
            for (const [place, end] of ends.entries())
              expect(end).toBeGreaterThan((ends[place - 1] ?? 0) - 1e-12);
          }
        },
      ),
    );
  });

  it('refuses to share out nothing', () => {
    expect(refused(pareto([]))).toEqual({ ok: false, reason: 'noFailures', says: 'Nothing has failed yet.' });
    expect(() => pareto(['a'], { level: 2 })).toThrow('pareto: level must be');
  });
});
