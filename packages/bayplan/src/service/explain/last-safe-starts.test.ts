import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BayPlan } from '../bay-plan';
import { checkBayPlan } from '../check-bay-plan';
import { anyService } from '../fixtures';
import { openPlanning } from '../search/open-planning';
import type { Service, ServiceTask } from '../service-model';
import { lastSafeStarts } from './last-safe-starts';

function task(id: string, minutes: number, more: Partial<ServiceTask> = {}): ServiceTask {
  const duration = { low: minutes, likely: minutes, high: minutes };
  return {
    id,
    car: 'car',
    mandatory: true,
    ways: [{ id: 'usual', duration, crew: [{ count: 1 }] }],
    ...more,
  };
}

/** One after the other by one person: pads 4, nuts 2 (1 after the pads), lamps 3 in 20. */
const SERVICE: Service = {
  cars: [{ id: 'car', inTime: 0, outTime: 20, latest: 30 }],
  people: [{ id: 'Ada', skills: [], hours: [{ from: 0, until: 30 }] }],
  places: [],
  tools: [],
  accesses: [],
  tasks: [task('pads', 4), task('nuts', 2, { after: [{ task: 'pads', lag: 1 }] }), task('lamps', 3)],
};
const PLAN: BayPlan = {
  work: [
    { task: 'pads', way: 'usual', start: 0, finish: 4, people: [{ person: 'Ada' }] },
    { task: 'nuts', way: 'usual', start: 5, finish: 7, people: [{ person: 'Ada' }] },
    { task: 'lamps', way: 'usual', start: 7, finish: 10, people: [{ person: 'Ada' }] },
  ],
  left: [],
  objective: { late: 0, value: 0, finish: 10, handOvers: 0 },
};

/** The plan with one task later by so much and, in order of start, each later one only as much as it must. */
function delayed(service: Service, plan: BayPlan, id: string, start: number): BayPlan {
  const delays = new Map<string, number>();
  const latest = lastSafeStarts(service, plan);
  for (const { task: other, start: planned } of plan.work) {
    const before = plan.work.find((one) => one.task === id)?.start ?? 0;
    if (other === id) delays.set(other, start);
    else delays.set(other, planned > before ? (latest.get(other) ?? planned) : planned);
  }
  return {
    ...plan,
    work: plan.work.map((one) => {
      const moved = delays.get(one.task) ?? one.start;
      return { ...one, start: moved, finish: moved + one.finish - one.start };
    }),
  };
}

describe('lastSafeStarts', () => {
  it('leaves room for all that comes after by the same person', () => {
    expect([...lastSafeStarts(SERVICE, PLAN)].toSorted()).toEqual([
      ['lamps', 17],
      ['nuts', 15],
      ['pads', 10],
    ]);
  });

  it('keeps to hours, longest lags and pins, and takes the planned finish of a car that is late anyway', () => {
    const people = [{ id: 'Ada', skills: [], hours: [{ from: 0, until: 12 }] }];
    expect(lastSafeStarts({ ...SERVICE, people }, PLAN).get('lamps')).toBe(9);
    const [pads = task('', 1), , lamps = task('', 1)] = SERVICE.tasks;
    const nuts = task('nuts', 2, { after: [{ task: 'pads', lag: 1, maxLag: 3 }] });
    expect(lastSafeStarts({ ...SERVICE, tasks: [pads, nuts, lamps] }, PLAN).get('nuts')).toBe(7);
    const pinned = { ...lamps, pin: { start: 7 } };
    expect(lastSafeStarts({ ...SERVICE, tasks: [pads, nuts, pinned] }, PLAN).get('pads')).toBe(0);
    const late = { ...SERVICE, cars: [{ id: 'car', inTime: 0, outTime: 8, latest: 30 }] };
    expect(lastSafeStarts(late, PLAN).get('lamps')).toBe(7);
  });

  it('says nothing of what is under way', () => {
    const underWay = { since: 0, until: 4, way: 'usual', people: ['Ada'] };
    const tasks = SERVICE.tasks.map((one) => (one.id === 'pads' ? { ...one, underWay } : one));
    expect([...lastSafeStarts({ ...SERVICE, tasks }, PLAN).keys()].toSorted()).toEqual(['lamps', 'nuts']);
  });

  it('never comes before the planned start, and starting then, with the rest as late as that, keeps every rule', () => {
    let looked = 0;
    fc.assert(
      fc.property(anyService(), (service) => {
        // Without longest lags: with them, what comes after may not wait as long as it could otherwise.
        const tasks = service.tasks.map((one) => ({
          ...one,
          after: (one.after ?? []).map(({ maxLag: _, ...link }) => link),
        }));
        const loose = { ...service, tasks };
        const { plan } = openPlanning(loose, { seed: 1 }).step(60);
        if (!plan) return;
        for (const [id, start] of lastSafeStarts(loose, plan)) {
          looked += 1;
          expect(start).toBeGreaterThanOrEqual(plan.work.find((one) => one.task === id)?.start ?? 0);
          const faults = checkBayPlan(loose, delayed(loose, plan, id, start));
          expect(faults.filter(({ kind }) => kind !== 'objective')).toEqual([]);
        }
      }),
      { numRuns: 80 },
    );
    expect(looked).toBeGreaterThan(12);
  });
});
