import { describe, expect, it } from 'vitest';
import { checkSchedule } from './check-schedule';
import type { Project } from './model';

const PROJECT: Project = {
  resources: [{ id: 'people', capacity: 2 }],
  activities: [
    { id: 'lift', duration: 2, needs: [{ resource: 'people', amount: 2 }], after: [] },
    {
      id: 'wheels',
      duration: 3,
      needs: [{ resource: 'people', amount: 1 }],
      after: [{ activity: 'lift', lag: 1 }],
    },
    { id: 'lamps', duration: 1, needs: [{ resource: 'people', amount: 1 }], after: [] },
  ],
};

function kindsOf(starts: number[], makespan: number): string[] {
  return checkSchedule(PROJECT, { starts, makespan }).map(({ kind }) => kind);
}

describe('checkSchedule', () => {
  it('finds nothing wrong with a schedule that keeps every rule', () => {
    expect(kindsOf([0, 3, 2], 6)).toEqual([]);
  });

  it('finds an early start, with its lag', () => {
    expect(checkSchedule(PROJECT, { starts: [0, 2, 2], makespan: 5 })).toEqual([
      { kind: 'tooEarly', sentence: 'wheels starts at 2, but may start at 3, after lift.' },
    ]);
  });

  it('finds too much in use, even where the one that starts later is listed first', () => {
    expect(checkSchedule(PROJECT, { starts: [1, 4, 0], makespan: 7 })).toEqual([]);
    expect(kindsOf([0, 3, 1], 6)).toEqual(['tooMuch']);
  });

  it('finds a wrong end, broken starts and missing ones', () => {
    expect(kindsOf([0, 3, 2], 5)).toEqual(['makespan']);
    expect(kindsOf([0, 3.5, 2], 6.5)).toEqual(['notWhole']);
    expect(kindsOf([0, 3, -1], 6)).toEqual(['notWhole']);
    expect(kindsOf([0, 3], 6)).toEqual(['count']);
  });
});
