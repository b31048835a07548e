import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkSchedule } from '../check-schedule';
import { anyProject, shortestByTryingAll } from '../fixtures';
import type { Project } from '../model';
import { Chance } from './chance';
import { openSearch } from './open-search';

const SEEDS = fc.integer();
const FEW = { numRuns: 40 };

describe('openSearch', () => {
  it('gives a schedule that keeps every rule, no shorter than the bound', () => {
    fc.assert(
      fc.property(anyProject(), SEEDS, fc.integer({ min: 1, max: 200 }), (project, seed, budget) => {
        const { best, lowerBound, proven, schedules } = openSearch(project, { seed }).step(budget);
        expect(checkSchedule(project, best)).toEqual([]);
        expect(best.makespan).toBeGreaterThanOrEqual(lowerBound);
        expect(proven).toBe(best.makespan === lowerBound);
        if (proven) expect(schedules).toBeLessThanOrEqual(budget);
        else expect(schedules).toBe(budget);
      }),
      FEW,
    );
  });

  it('gives the same plan for the same seed and budget, however it is divided into steps', () => {
    const steps = fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(anyProject({ most: 20 }), SEEDS, steps, (project, seed, sizes) => {
        const divided = openSearch(project, { seed });
        const results = sizes.map((size) => divided.step(size));
        const whole = openSearch(project, { seed }).step(sizes.reduce((sum, size) => sum + size));
        expect(results.at(-1)).toEqual(whole);
      }),
      FEW,
    );
  });

  it('finds the shortest schedule of small projects, and never claims a longer one proven', () => {
    let proven = 0;
    fc.assert(
      fc.property(anyProject({ most: 6 }), SEEDS, (project, seed) => {
        const shortest = shortestByTryingAll(project);
        const result = openSearch(project, { seed }).step(600);
        expect(result.lowerBound).toBeLessThanOrEqual(shortest);
        expect(result.best.makespan).toBe(shortest);
        if (result.proven) proven += 1;
      }),
      FEW,
    );
    expect(proven).toBeGreaterThan(0);
  });

  it('goes on improving what the priority rules begin with', () => {
    const project = crowdedProject();
    const search = openSearch(project, { seed: 3 });
    const begun = search.step(40);
    const later = search.step(900);
    expect(later.best.makespan).toBeLessThan(begun.best.makespan);
    expect(checkSchedule(project, later.best)).toEqual([]);
  });

  it('finds other ways with other seeds', () => {
    const project = crowdedProject();
    const plans = [1, 2, 3, 4].map((seed) => openSearch(project, { seed }).step(150).best.starts.join());
    expect(new Set(plans).size).toBeGreaterThan(1);
  });

  it('has nothing to do for an empty project', () => {
    const result = openSearch({ resources: [], activities: [] }, { seed: 1 }).step(10);
    expect(result).toEqual({ best: { starts: [], makespan: 0 }, lowerBound: 0, proven: true, schedules: 1 });
  });

  it('refuses a project that can have no schedule, a broken seed and a broken step', () => {
    const tooMuch: Project = {
      resources: [{ id: 'jack', capacity: 1 }],
      activities: [{ id: 'lift', duration: 1, needs: [{ resource: 'jack', amount: 2 }], after: [] }],
    };
    expect(() => openSearch(tooMuch, { seed: 1 })).toThrow('lift needs 2 of jack, but there is only 1.');
    const empty: Project = { resources: [], activities: [] };
    expect(() => openSearch(empty, { seed: 0.5 })).toThrow('openSearch: the seed must be a whole number');
    expect(() => openSearch(empty, { seed: 1 }).step(0)).toThrow(
      'step: the schedules must be a whole number',
    );
  });
});

/** Sixty invented activities that crowd four resources. */
function crowdedProject(): Project {
  const chance = new Chance(11);
  const resources = ['people', 'jacks', 'guns', 'lamps'].map((id) => ({ id, capacity: 12 }));
  const activities = Array.from({ length: 60 }, (_, number) => ({
    id: `a${number}`,
    duration: 1 + chance.below(10),
    needs: resources.map(({ id }) => ({ resource: id, amount: chance.below(10) })),
    after: number < 6 ? [] : [{ activity: `a${chance.below(number)}` }, { activity: `a${number - 6}` }],
  }));
  return { resources, activities };
}
