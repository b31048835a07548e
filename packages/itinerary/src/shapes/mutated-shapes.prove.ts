import { describe, expect, it } from 'vitest';
import { judgeMutation } from './judge-mutation';

const COUNT = 5000;

describe('five thousand mutated shapes', () => {
  it('never lose a figure, a row or the layout in silence', () => {
    const failures: string[] = [];
    const counts: Record<string, number> = {};
    for (let seed = 0; seed < COUNT; seed += 1) {
      const { failure, mutation, outcome } = judgeMutation(seed);
      const key = `${mutation.kind} ${outcome}`;
      counts[key] = (counts[key] ?? 0) + 1;
      if (failure) failures.push(`${seed} ${mutation.shape.title}: ${mutation.what}: ${failure} (${outcome})`);
    }
    expect(failures).toEqual([]);
    // Otherwise the mutations would prove nothing: every kind comes out in every way that it may.
    for (const key of [
      'figure otherModel',
      'figure newProblem',
      'layout sameModel',
      'layout newProblem',
      'row otherModel',
      'row newProblem',
      'anything otherModel',
      'anything newProblem',
    ]) {
      expect(counts[key] ?? 0, key).toBeGreaterThan(20);
    }
  });
});
