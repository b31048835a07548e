import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyProject, shortestByTryingAll } from '../fixtures';
import type { Activity, Project } from '../model';
import { lowerBounds } from './lower-bounds';

function task(id: string, duration: number, amount: number, ...after: string[]): Activity {
  return {
    id,
    duration,
    needs: [{ resource: 'people', amount }],
    after: after.map((activity) => ({ activity })),
  };
}

function withPeople(capacity: number, ...activities: Activity[]): Project {
  return { resources: [{ id: 'people', capacity }], activities };
}

describe('lowerBounds', () => {
  it('counts work over capacity, with what must come before and after all of it', () => {
    // 1 before, 3 × 2 people-units of work for 2 people, 1 after.
    const project = withPeople(
      2,
      task('in', 1, 0),
      ...['a', 'b', 'c'].map((id) => task(id, 2, 1, 'in')),
      task('out', 1, 0, 'a', 'b', 'c'),
    );
    expect(lowerBounds(project)).toMatchObject({ criticalPath: 4, resources: 5, best: 5 });
  });

  it('adds to the critical path what does not fit beside it', () => {
    // The long job fits beside neither half of the path (2 + 2 > 3): all of its 3 is missing.
    const project = withPeople(3, task('first', 4, 2), task('second', 4, 2, 'first'), task('long', 3, 2));
    expect(lowerBounds(project)).toMatchObject({ criticalPath: 8, criticalSequence: 11, best: 11 });
  });

  it('lets a job use the longest stretch of the path that has room for it', () => {
    const project = withPeople(
      3,
      task('first', 2, 1),
      task('second', 4, 2, 'first'),
      task('third', 3, 1, 'second'),
      task('long', 5, 2),
    );
    expect(lowerBounds(project)).toMatchObject({ criticalPath: 9, criticalSequence: 11 });
  });

  it('refutes deadlines by what cannot run side by side', () => {
    // Two short ones, one after the other, and a long one that excludes both: with 4 the long one could only lie between.
    const project = withPeople(3, task('first', 1, 2), task('second', 1, 2, 'first'), task('long', 3, 2));
    expect(lowerBounds(project)).toMatchObject({
      resources: 4,
      criticalSequence: 4,
      destructive: 5,
      best: 5,
    });
    expect(shortestByTryingAll(project)).toBe(5);
  });

  it('never exceeds the shortest schedule', () => {
    fc.assert(
      fc.property(anyProject({ most: 6 }), (project) => {
        const shortest = shortestByTryingAll(project);
        const { criticalPath, resources, criticalSequence, destructive, best } = lowerBounds(project);
        for (const bound of [criticalPath, resources, criticalSequence, destructive, best]) {
          expect(bound).toBeLessThanOrEqual(shortest);
        }
      }),
      { numRuns: 300 },
    );
  });
});
