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
      if (failure)
        failures.push(`${seed} ${mutation.shape.title}: ${mutation.what}: ${failure} (${outcome})`);
    }
    expect(failures).toEqual([]);
    // Otherwise the mutations would prove nothing: they come out in every way that they may.
    expect(counts['figure otherModel'] ?? 0).toBeGreaterThan(100);
    expect(counts['figure newProblem'] ?? 0).toBeGreaterThan(1000);
    expect(counts['layout sameModel'] ?? 0).toBeGreaterThan(800);
    expect(counts['row otherModel'] ?? 0).toBeGreaterThan(20);
    expect(counts['row newProblem'] ?? 0).toBeGreaterThan(500);
    expect(counts['anything otherModel'] ?? 0).toBeGreaterThan(20);
    expect(counts['anything newProblem'] ?? 0).toBeGreaterThan(500);
  });
});
