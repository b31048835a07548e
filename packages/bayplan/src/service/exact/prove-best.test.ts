import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareObjectives, type Objective } from '../bay-plan';
import { checkBayPlan } from '../check-bay-plan';
import { compileService } from '../compile-service';
import { anyService } from '../fixtures';
import { toBayPlan } from '../judge-work';
import { bestByProgram } from '../program/fixtures';
import type { Service } from '../service-model';
import { proveBest, type ServiceIncumbent } from './prove-best';

function prove(service: Service): ServiceIncumbent {
  const incumbent: ServiceIncumbent = { best: undefined, bound: {} };
  for (const _ of proveBest(compileService(service), incumbent));
  return incumbent;
}

/** Whether a plan with the first objective is at least as good; any plan is better than none. */
function isNoWorse(one: Objective | undefined, other: Objective | undefined): boolean {
  if (!other) return true;
  return one !== undefined && compareObjectives(one, other) <= 0;
}

describe('proveBest', () => {
  it('agrees with an integer program on every level', async () => {
    const services = fc.sample(anyService({ most: 4 }), { numRuns: 12, seed: 3 });
    let feasible = 0;
    for (const service of services) {
      const { best } = prove(service);
      expect(best?.objective, JSON.stringify(service)).toEqual(await bestByProgram(service));
      if (best) feasible += 1;
    }
    expect(feasible).toBeGreaterThanOrEqual(6);
  });

  it('closes what is being opened only when it is open, also when nothing else needs it open', async () => {
    const lasting = (low: number) => ({ low, likely: low, high: low });
    const service: Service = {
      cars: [{ id: 'car', inTime: 0, outTime: 5, latest: 9 }],
      people: ['Ada', 'Ben'].map((id) => ({ id, skills: [], hours: [{ from: 0, until: 9 }] })),
      places: [],
      tools: [],
      accesses: [{ id: 'stands', car: 'car', opening: 'up', closing: 'down' }],
      tasks: [
        {
          id: 'up',
          car: 'car',
          ways: [{ id: 'way', duration: lasting(1), crew: [{ count: 1 }] }],
          underWay: { since: 0, until: 3, way: 'way', people: ['Ada'] },
        },
        { id: 'down', car: 'car', ways: [{ id: 'way', duration: lasting(3), crew: [{ count: 1 }] }] },
      ],
    };
    const { best } = prove(service);
    expect(best?.objective).toMatchObject({ late: 1, finish: 6 });
    expect(await bestByProgram(service)).toEqual(best?.objective);
  });

  it('makes plans that keep every rule', () => {
    fc.assert(
      fc.property(anyService({ most: 6 }), (service) => {
        const { best, bound } = prove(service);
        if (!best) return;
        expect(checkBayPlan(service, toBayPlan(compileService(service), best))).toEqual([]);
        expect(bound).toEqual(best.objective);
      }),
      { numRuns: 80 },
    );
  });

  it('never gets worse with one more person, or with someone who can do more', () => {
    fc.assert(
      fc.property(anyService(), fc.subarray(['engine', 'brakes']), fc.boolean(), (service, skills, more) => {
        const everyone = service.people.map((person) => ({ ...person, skills: ['engine', 'brakes'] }));
        const another = { id: 'another', skills, hours: [{ from: 0, until: 30 }] };
        const people = more ? [...service.people, another] : everyone;
        const before = prove(service).best?.objective;
        expect(isNoWorse(prove({ ...service, people }).best?.objective, before)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  it('never gets worse with shorter durations, where nothing is pinned to a time and no lag has a maximum', () => {
    fc.assert(
      fc.property(anyService(), fc.nat(20), (service, which) => {
        const tasks = service.tasks.map(({ pin, underWay: _, after, ...task }) => ({
          ...task,
          ...(pin?.start === undefined ? { ...(pin && { pin }) } : {}),
          after: (after ?? []).map(({ maxLag: _unused, ...link }) => link),
        }));
        const shorter = tasks.map((task, number) => ({
          ...task,
          ways:
            number === which % tasks.length ? task.ways.map((way) => ({ ...way, duration: ONE })) : task.ways,
        }));
        const before = prove({ ...service, tasks }).best?.objective;
        expect(isNoWorse(prove({ ...service, tasks: shorter }).best?.objective, before)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  it('makes the same plan each time', () => {
    fc.assert(
      fc.property(anyService(), (service) => {
        expect(prove(service)).toEqual(prove(service));
      }),
      { numRuns: 20 },
    );
  });
});

const ONE = { low: 1, likely: 1, high: 1 };
