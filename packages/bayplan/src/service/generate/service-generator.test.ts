import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkBayPlan } from '../check-bay-plan';
import { compileService } from '../compile-service';
import { anyService } from '../fixtures';
import { toBayPlan } from '../judge-work';
import type { Service, ServiceTask } from '../service-model';
import { LEFT } from './choose-work';
import { type Genes, ServiceGenerator } from './service-generator';

function task(id: string, minutes: number, more: Partial<ServiceTask> = {}): ServiceTask {
  const duration = { low: minutes, likely: minutes, high: minutes };
  const ways = [{ id: 'usual', duration, crew: [{ count: 1 }] }];
  return { id, car: 'car', mandatory: true, ways, ...more };
}

function serviceOf(tasks: readonly ServiceTask[], people: readonly string[]): Service {
  return {
    cars: [{ id: 'car', inTime: 0, outTime: 10, latest: 30 }],
    people: people.map((id) => ({ id, skills: [], hours: [{ from: 0, until: 100 }] })),
    places: [],
    tools: [],
    accesses: [],
    tasks,
  };
}

/** Of its tasks `up` and `down` open and close what the others need open or closed. */
function onStands(service: Service): Service {
  return { ...service, accesses: [{ id: 'stands', car: 'car', opening: 'up', closing: 'down' }] };
}

/** All by the first way, in the order of the tasks. */
function genesOf({ tasks }: Service): Genes {
  return {
    priorities: Float64Array.from(tasks, (_, number) => number),
    ways: new Int32Array(tasks.length),
    sides: new Uint8Array(tasks.length).fill(1),
  };
}

/** From a row of whole numbers, always the same for the same. */
function anyGenes({ tasks }: Service, dice: readonly number[]): Genes {
  const throwOf = (task: number, which: number) => dice[(3 * task + which) % dice.length] ?? 0;
  return {
    priorities: Float64Array.from(tasks, (_, number) => throwOf(number, 0)),
    ways: Int32Array.from(tasks, ({ mandatory }, number) =>
      mandatory || throwOf(number, 1) % 4 > 0 ? 0 : LEFT,
    ),
    sides: Uint8Array.from(tasks, (_, number) => throwOf(number, 2) % 2),
  };
}

const DICE = fc.array(fc.nat(20), { minLength: 7, maxLength: 29 });

describe('ServiceGenerator', () => {
  it('starts each task as soon as somebody is free, and holds back what something must follow before long', () => {
    const tasks = [
      task('bleed', 2),
      task('wash', 5),
      task('test', 1, { after: [{ task: 'bleed', maxLag: 0 }], notBefore: 6 }),
      task('oil', 3),
    ];
    const service = serviceOf(tasks, ['Ada', 'Ben']);
    const generator = new ServiceGenerator(compileService(service));
    const made = generator.generate(genesOf(service));
    expect(made).toMatchObject({ broken: 0, objective: { late: 0, finish: 7 } });
    expect([...generator.starts]).toEqual([4, 0, 6, 0]);
    expect(generator.schedules).toBe(2);
  });

  it('leaves what would keep something that must be done from being finished in time', () => {
    const tasks = [
      task('wash', 4, { mandatory: false }),
      task('pads', 5),
      task('wax', 5, { mandatory: false }),
    ];
    const service = serviceOf(tasks, ['Ada']);
    const made = new ServiceGenerator(compileService(service)).generate(genesOf(service));
    expect(made?.decided.map((one) => one?.start)).toEqual([0, 4, undefined]);
  });

  it('tells by how much a plan is broken that has a task which nobody can do', () => {
    const needsTwo = {
      ways: [{ id: 'usual', duration: { low: 2, likely: 2, high: 2 }, crew: [{ count: 2 }] }],
    };
    const service = serviceOf([task('lift', 2, needsTwo)], ['Ada']);
    const made = new ServiceGenerator(compileService(service)).generate(genesOf(service));
    // The horizon: the latest moment of the car and all the work after it.
    expect(made?.broken).toBe(32);
    expect(made?.decided[0]?.people).toEqual([[]]);
  });

  it('gives what can only come before an opening its turn no later than that, and what it waits for too', () => {
    const optional = { mandatory: false };
    const startsWith = (rollMinutes: number, rollPriority: number, after: ServiceTask['after'] = []) => {
      const tasks = [
        task('up', 1, optional),
        task('down', 1, optional),
        task('pads', 2, { open: ['stands'] }),
        task('hub', 2, { ...optional, open: ['stands'], after: [{ task: 'roll' }] }),
        task('wash', 7, optional),
        task('roll', rollMinutes, { ...optional, closed: ['stands'], after }),
        task('look', 1, optional),
      ];
      const service = onStands(serviceOf(tasks, ['Ada']));
      const genes = { ...genesOf(service), sides: new Uint8Array(tasks.length) };
      genes.priorities[5] = rollPriority;
      const made = new ServiceGenerator(compileService(service)).generate(genes);
      expect(made).toMatchObject({ broken: 0, objective: { late: 0 } });
      return made?.decided.map((one) => one?.start);
    };
    expect(startsWith(2, 5)).toEqual([2, 7, 3, 5, undefined, 0, 8]);
    // There is no time for it, but time for all the rest that needs the car up.
    expect(startsWith(8, 5)).toEqual([0, 5, 1, 3, undefined, undefined, 6]);
    const afterLook = [{ task: 'look' }];
    expect(startsWith(2, 5, afterLook)).toEqual([3, 8, 4, 6, undefined, 1, 0]);
    expect(startsWith(2, -1, afterLook)).toEqual([3, 8, 4, 6, undefined, 1, 0]);
  });

  it('leaves the least urgent of what waits for itself, and nothing that only waits for that', () => {
    const optional = { mandatory: false };
    const tasks = [
      task('up', 1, optional),
      task('down', 1, optional),
      task('hub', 2, { open: ['stands'] }),
      task('clean', 1, { ...optional, after: [{ task: 'hub' }] }),
      task('roll', 1, { ...optional, closed: ['stands'], after: [{ task: 'clean' }] }),
      task('wash', 1, { ...optional, after: [{ task: 'roll' }] }),
    ];
    const service = onStands(serviceOf(tasks, ['Ada']));
    const generator = new ServiceGenerator(compileService(service));
    const leftBy = (priorities: readonly number[]) => {
      const genes = { ...genesOf(service), sides: new Uint8Array(tasks.length) };
      const made = generator.generate({ ...genes, priorities: Float64Array.from(priorities) });
      expect(made?.broken).toBe(0);
      return tasks.filter((_, number) => !made?.decided[number]).map(({ id }) => id);
    };
    expect(leftBy([0, 1, 2, 3, 4, 5])).toEqual(['roll']);
    expect(leftBy([0, 1, 2, 4, 3, 5])).toEqual(['clean']);
  });

  it('leaves what needs something open and waits for itself where what must be done keeps it open', () => {
    const tasks = [
      task('up', 1, { mandatory: false }),
      task('down', 1, { mandatory: false }),
      task('hub', 2, { mandatory: false, open: ['stands'] }),
      task('roll', 1, { closed: ['stands'], after: [{ task: 'hub' }] }),
      task('pads', 2, { open: ['stands'] }),
    ];
    const service = onStands(serviceOf(tasks, ['Ada']));
    const generator = new ServiceGenerator(compileService(service));
    const made = generator.generate({ ...genesOf(service), sides: new Uint8Array(5) });
    expect(made?.broken).toBe(0);
    expect(made?.decided.map((one) => one?.start)).toEqual([1, 4, undefined, 0, 2]);
  });

  it('keeps every rule whenever it says that it breaks none', () => {
    let plans = 0;
    fc.assert(
      fc.property(anyService({ most: 7 }), DICE, (service, dice) => {
        const compiled = compileService(service);
        const made = new ServiceGenerator(compiled).generate(anyGenes(service, dice));
        if (made?.broken !== 0) return;
        plans += 1;
        expect(checkBayPlan(service, toBayPlan(compiled, made))).toEqual([]);
      }),
      { numRuns: 300 },
    );
    expect(plans).toBeGreaterThan(20);
  });

  it('gives nobody what waits for itself, also when the plan before gave it somebody', () => {
    const tasks = [
      task('up', 1, { mandatory: false }),
      task('down', 1, { mandatory: false }),
      task('hub', 2, { open: ['stands'] }),
      task('roll', 1, { closed: ['stands'], after: [{ task: 'hub' }] }),
    ];
    const service = onStands(serviceOf(tasks, ['Ada']));
    const generator = new ServiceGenerator(compileService(service));
    const before = generator.generate(genesOf(service));
    expect(before?.broken).toBe(0);
    expect(before?.decided.map((one) => one?.people)).toEqual([[[0]], [[0]], [[0]], [[0]]]);
    const made = generator.generate({ ...genesOf(service), sides: new Uint8Array(4) });
    expect(made?.broken).toBeGreaterThan(0);
    expect(made?.decided.map((one) => one?.people)).toEqual([[[]], [[]], [[]], [[]]]);
  });

  it('makes the same of the same genes, whatever it made before', () => {
    fc.assert(
      fc.property(anyService({ most: 7 }), fc.array(DICE, { minLength: 2, maxLength: 4 }), (service, all) => {
        const compiled = compileService(service);
        const used = new ServiceGenerator(compiled);
        for (const dice of all) {
          const fresh = new ServiceGenerator(compiled).generate(anyGenes(service, dice));
          expect(used.generate(anyGenes(service, dice))).toEqual(fresh);
        }
      }),
    );
  });

  it('makes the same of a crowd of whom most are never there', () => {
    const crowd = Array.from({ length: 40 }, (_, person) => ({ id: `away${person}`, skills: [], hours: [] }));
    fc.assert(
      fc.property(anyService({ most: 7 }), DICE, (service, dice) => {
        const crowded = { ...service, people: [...crowd, ...service.people] };
        const generate = (one: Service) => {
          const generator = new ServiceGenerator(compileService(one));
          const made = generator.generate(anyGenes(one, dice));
          return { broken: made?.broken, objective: made?.objective, starts: [...generator.starts] };
        };
        expect(generate(crowded)).toEqual(generate(service));
      }),
    );
  });
});
