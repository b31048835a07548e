import { describe, expect, it } from 'vitest';
import { type JudgedMutation, judgeMutation } from './judge-mutation';

const COUNT = 500;

describe('mutated shapes', () => {
  const judged: JudgedMutation[] = Array.from({ length: COUNT }, (_, seed) => judgeMutation(seed));

  it('never lose a figure, a row or the layout in silence', () => {
    const failures = judged.flatMap(({ failure, mutation, outcome }, seed) =>
      failure ? [`${seed} ${mutation.shape.title}: ${mutation.what}: ${failure} (${outcome})`] : [],
    );
    expect(failures).toEqual([]);
  });

  it('are of every kind and come out every way', () => {
    const count = (kind: string, outcome: string) =>
      judged.filter((one) => one.mutation.kind === kind && one.outcome === outcome).length;
    expect(count('figure', 'otherModel')).toBeGreaterThan(5);
    expect(count('figure', 'newProblem')).toBeGreaterThan(80);
    expect(count('layout', 'sameModel')).toBeGreaterThan(50);
    expect(count('row', 'newProblem')).toBeGreaterThan(30);
    expect(count('anything', 'newProblem')).toBeGreaterThan(30);
  });
});
