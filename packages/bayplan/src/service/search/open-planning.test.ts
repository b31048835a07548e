import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyProject, shortestByTryingAll } from '../../fixtures';
import type { Project } from '../../model';
import { compareObjectives } from '../bay-plan';
import { checkBayPlan } from '../check-bay-plan';
import { anyService } from '../fixtures';
import type { Service } from '../service-model';
import { openPlanning } from './open-planning';

const SEEDS = fc.integer();
/** A plain project as a service: one car, a tool for each resource, nobody needed. Milestones and lags become what they mean. */
function serviceOf({ resources, activities }: Project): Service {
  const far = 200;
  return {
    cars: [{ id: 'car', inTime: 0, outTime: far }],
    people: [],
    places: [],
    tools: resources.map(({ id, capacity }) => ({ id, count: capacity })),
    accesses: [],
    tasks: activities.map(({ id, duration, needs, after }) => ({
      id,
      car: 'car',
      mandatory: true,
      ways: [
        {
          id: 'only',
          duration: { low: duration, likely: duration, high: duration },
          crew: [],
          tools: needs.flatMap(({ resource, amount }) => Array.from({ length: amount }, () => resource)),
        },
      ],
      after: [...new Map(after.map((link) => [link.activity, link])).keys()].map((task) => ({
        task,
        lag: Math.max(...after.filter(({ activity }) => activity === task).map(({ lag = 0 }) => lag)),
      })),
    })),
  };
}

describe('openPlanning', () => {
  it('gives a plan that keeps every rule, whatever the budget', () => {
    let plans = 0;
    fc.assert(
      fc.property(
        anyService({ most: 6 }),
        SEEDS,
        fc.integer({ min: 1, max: 90 }),
        (service, seed, budget) => {
          const { plan } = openPlanning(service, { seed }).step(budget);
          if (!plan) return;
          plans += 1;
          expect(checkBayPlan(service, plan)).toEqual([]);
        },
      ),
      { numRuns: 100 },
    );
    expect(plans).toBeGreaterThan(8);
  });

  it('gives no plan that leaves what goes together with something that must be done', () => {
    const ways = [{ id: 'usual', duration: { low: 1, likely: 1, high: 1 }, crew: [{ count: 1 }] }];
    const task = { car: 'car', mandatory: true, ways };
    const service: Service = {
      cars: [{ id: 'car', inTime: 0, outTime: 9 }],
      people: [{ id: 'Ada', skills: [], hours: [{ from: 0, until: 9 }] }],
      places: [],
      tools: [],
      accesses: [],
      tasks: [
        { ...task, id: 'pads' },
        {
          ...task,
          id: 'bleed',
          mandatory: false,
          pin: { done: false },
          after: [{ task: 'pads', together: true }],
        },
        { ...task, id: 'nuts', after: [{ task: 'pads', together: true }] },
      ],
    };
    expect(openPlanning(service, { seed: 0 }).step(1).plan).toBeUndefined();
    expect(openPlanning(service, { seed: 0 }).step(1000)).toMatchObject({ plan: undefined, proven: true });
  });

  it('ends with the best plan whatever the seed', () => {
    fc.assert(
      fc.property(anyService(), SEEDS, SEEDS, (service, one, other) => {
        const first = openPlanning(service, { seed: one }).step(100_000);
        const second = openPlanning(service, { seed: other }).step(100_000);
        expect([first.proven, second.proven]).toEqual([true, true]);
        expect(first.plan?.objective).toEqual(second.plan?.objective);
        if (first.plan) expect(first.bound).toEqual(first.plan.objective);
      }),
      { numRuns: 30 },
    );
  });

  it('gives the same plan for the same seed and budget, and never a worse one for more', () => {
    fc.assert(
      fc.property(
        anyService({ most: 6 }),
        SEEDS,
        fc.integer({ min: 1, max: 150 }),
        (service, seed, budget) => {
          const search = openPlanning(service, { seed });
          const result = search.step(budget);
          expect(openPlanning(service, { seed }).step(budget)).toEqual(result);
          const later = search.step(50).plan;
          if (!result.plan) return;
          expect(later && compareObjectives(later.objective, result.plan.objective)).toBeLessThanOrEqual(0);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('solves a plain project as the special case that it is', () => {
    fc.assert(
      fc.property(anyProject({ most: 6 }), (project) => {
        const activities = project.activities.map((one) => ({ ...one, duration: Math.max(1, one.duration) }));
        const { plan, proven } = openPlanning(serviceOf({ ...project, activities }), { seed: 1 }).step(
          100_000,
        );
        expect(proven).toBe(true);
        expect(plan?.objective.finish).toBe(shortestByTryingAll({ ...project, activities }));
      }),
      { numRuns: 60 },
    );
  });

  it('refuses a service that makes no sense, a broken seed and a broken step', () => {
    const empty: Service = { cars: [], people: [], places: [], tools: [], accesses: [], tasks: [] };
    expect(() => openPlanning(empty, { seed: 0.5 })).toThrow('openPlanning: the seed must be a whole number');
    expect(() => openPlanning(empty, { seed: 1 }).step(0)).toThrow(
      'step: the schedules must be a whole number',
    );
    const broken = { ...empty, accesses: [{ id: 'stands', car: 'car' }] };
    expect(() => openPlanning(broken, { seed: 1 })).toThrow('stands names car, which is not a car.');
    expect(openPlanning(empty, { seed: 1 }).step(300)).toMatchObject({
      plan: { work: [], left: [], objective: { late: 0, value: 0, finish: 0, handOvers: 0 } },
      proven: true,
    });
  });
});
