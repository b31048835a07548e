import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyProject } from '../fixtures';
import type { Project } from '../model';
import { criticalPath } from './critical-path';
import { estimateChain, estimateDuration, type ThreePoint } from './three-point';

// Hillier & Lieberman, Introduction to Operations Research, chapter on project management: the Reliable Construction Co.
// example. Three-point durations in weeks, duration and predecessors as in the book; floats follow from its times.
const BOOK: [string, string, ThreePoint, number][] = [
  ['A', '', { low: 1, likely: 2, high: 3 }, 2],
  ['B', 'A', { low: 2, likely: 3.5, high: 8 }, 4],
  ['C', 'B', { low: 6, likely: 9, high: 18 }, 10],
  ['D', 'C', { low: 4, likely: 5.5, high: 10 }, 6],
  ['E', 'C', { low: 1, likely: 4.5, high: 5 }, 4],
  ['F', 'E', { low: 4, likely: 4, high: 10 }, 5],
  ['G', 'D', { low: 5, likely: 6.5, high: 11 }, 7],
  ['H', 'EG', { low: 5, likely: 8, high: 17 }, 9],
  ['I', 'C', { low: 3, likely: 7.5, high: 9 }, 7],
  ['J', 'FI', { low: 3, likely: 9, high: 9 }, 8],
  ['K', 'J', { low: 4, likely: 4, high: 4 }, 4],
  ['L', 'J', { low: 1, likely: 5.5, high: 7 }, 5],
  ['M', 'H', { low: 1, likely: 2, high: 3 }, 2],
  ['N', 'KL', { low: 5, likely: 5.5, high: 9 }, 6],
];
const CONSTRUCTION: Project = {
  resources: [],
  activities: BOOK.map(([id, after, , duration]) => ({
    id,
    duration,
    needs: [],
    after: [...after].map((activity) => ({ activity })),
  })),
};

describe('the construction example of Hillier & Lieberman', () => {
  it('has their means, and takes 44 weeks along A-B-C-E-F-J-L-N', () => {
    for (const [, , threePoint, duration] of BOOK) {
      expect(estimateDuration(threePoint).mean).toBeCloseTo(duration, 12);
    }
    const { length, path } = criticalPath(CONSTRUCTION);
    expect(length).toBe(44);
    expect(path.join('-')).toBe('A-B-C-E-F-J-L-N');
  });

  it('has their earliest and latest times and floats', () => {
    const rows = criticalPath(CONSTRUCTION).times.map((times) => [
      times.id,
      times.earliestStart,
      times.earliestFinish,
      times.latestStart,
      times.latestFinish,
      times.totalFloat,
      times.freeFloat,
    ]);
    expect(rows).toEqual([
      ['A', 0, 2, 0, 2, 0, 0],
      ['B', 2, 6, 2, 6, 0, 0],
      ['C', 6, 16, 6, 16, 0, 0],
      ['D', 16, 22, 20, 26, 4, 0],
      ['E', 16, 20, 16, 20, 0, 0],
      ['F', 20, 25, 20, 25, 0, 0],
      ['G', 22, 29, 26, 33, 4, 0],
      ['H', 29, 38, 33, 42, 4, 0],
      ['I', 16, 23, 18, 25, 2, 2],
      ['J', 25, 33, 25, 33, 0, 0],
      ['K', 33, 37, 34, 38, 1, 1],
      ['L', 33, 38, 33, 38, 0, 0],
      ['M', 38, 40, 42, 44, 4, 4],
      ['N', 38, 44, 38, 44, 0, 0],
    ]);
  });

  it('has a critical path of mean 44 and variance 9', () => {
    const { path } = criticalPath(CONSTRUCTION);
    const chain = BOOK.filter(([id]) => path.includes(id)).map(([, , threePoint]) => threePoint);
    const { mean, variance } = estimateChain(chain);
    expect(mean).toBeCloseTo(44, 12);
    expect(variance).toBeCloseTo(9, 12);
  });
});

describe('criticalPath', () => {
  it('is a chain of critical activities, each starting as soon as the one before and its lag let it', () => {
    fc.assert(
      fc.property(anyProject(), (project) => {
        const { length, times, path } = criticalPath(project);
        const byId = new Map(times.map((each) => [each.id, each]));
        const chain = path.flatMap((id) => byId.get(id) ?? []);
        expect(chain.every(({ critical }) => critical)).toBe(true);
        expect(chain[0]?.earliestStart).toBe(0);
        expect(chain.at(-1)?.earliestFinish).toBe(length);
        for (const { freeFloat, totalFloat } of times) {
          expect(freeFloat).toBeGreaterThanOrEqual(0);
          expect(freeFloat).toBeLessThanOrEqual(totalFloat);
        }
      }),
    );
  });
});

describe('estimateDuration', () => {
  it('refuses estimates out of order', () => {
    expect(() => estimateDuration({ low: 3, likely: 2, high: 5 })).toThrow('estimateDuration: 3, 2, 5');
  });
});
