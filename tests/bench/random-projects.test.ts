import { findProjectFault } from '@halfshaft/bayplan';
import { expect, it } from 'vitest';
import { chanceFrom } from '../faults/chance';
import { cellsOf, randomProject } from './random-projects';

it.each([30, 60, 120])(
  'makes projects of %i activities that have the measures they were asked for',
  (size) => {
    const chance = chanceFrom(5);
    for (const cell of cellsOf(size)) {
      const project = randomProject(cell, chance);
      const arcs = project.activities.reduce((sum, { after }) => sum + after.length, 0);
      const needs = project.activities.flatMap((activity) =>
        activity.needs.filter(({ amount }) => amount > 0),
      );
      expect(findProjectFault(project)).toBeUndefined();
      expect(project.activities).toHaveLength(size);
      // Three arcs from the source and three to the sink are not in the project.
      expect((arcs + 6) / (size + 2)).toBeCloseTo(cell.complexity, 1);
      expect(needs.length / (4 * size)).toBeCloseTo(cell.factor, 2);
    }
  },
);

it('has no arc that follows from others', () => {
  const cells = cellsOf(30).filter(({ complexity }) => complexity === 2.1);
  for (const cell of cells) {
    const { activities } = randomProject(cell, chanceFrom(8));
    const before = new Map(activities.map(({ id, after }) => [id, after.map(({ activity }) => activity)]));
    const all = (id: string): Set<string> =>
      new Set((before.get(id) ?? []).flatMap((one) => [one, ...all(one)]));
    for (const direct of before.values()) {
      for (const one of direct) expect(direct.some((other) => all(other).has(one))).toBe(false);
    }
  }
});
