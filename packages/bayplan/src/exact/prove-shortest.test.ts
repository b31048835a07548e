import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lowerBounds } from '../bounds/lower-bounds';
import { checkSchedule } from '../check-schedule';
import { compileProject } from '../compile-project';
import { anyProject, shortestByTryingAll } from '../fixtures';
import { scheduleByRule, toSchedule } from '../generate/schedule-by-rule';
import type { Project } from '../model';
import { proveShortest } from './prove-shortest';

/** From the schedule in the order of the numbers, without any breeding. */
function prove(project: Project) {
  const compiled = compileProject(project);
  const first = scheduleByRule(project, { rule: 'activityNumber', scheme: 'serial' });
  const starts = compiled.numberOf.map((number) => first.starts[number] ?? 0);
  const incumbent = { starts, makespan: first.makespan };
  let last = '';
  let descents = 0;
  for (const descent of proveShortest(compiled, incumbent)) {
    last = descent;
    descents += 1;
  }
  return { best: toSchedule(compiled, incumbent.starts, incumbent.makespan), last, descents };
}

describe('proveShortest', () => {
  it('finds and proves the shortest of small projects by itself, where bounds reach it and where they do not', () => {
    let beyondBounds = 0;
    fc.assert(
      fc.property(anyProject({ most: 7 }), (project) => {
        const { best, last } = prove(project);
        expect(last).toBe('closed');
        expect(checkSchedule(project, best)).toEqual([]);
        expect(best.makespan).toBe(shortestByTryingAll(project));
        if (lowerBounds(project).best < best.makespan) beyondBounds += 1;
      }),
      { numRuns: 300, seed: 5 },
    );
    expect(beyondBounds).toBeGreaterThan(0);
  });

  it('closes larger projects, no shorter than any bound, the same way each time', () => {
    fc.assert(
      fc.property(anyProject({ most: 14 }), (project) => {
        const one = prove(project);
        expect(checkSchedule(project, one.best)).toEqual([]);
        expect(one.best.makespan).toBeGreaterThanOrEqual(lowerBounds(project).best);
        expect(prove(project)).toEqual(one);
      }),
      { numRuns: 100 },
    );
  });
});
