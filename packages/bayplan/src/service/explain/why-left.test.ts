import { describe, expect, it } from 'vitest';
import { openPlanning } from '../search/open-planning';
import type { Service, ServiceTask } from '../service-model';
import { whyLeft } from './why-left';

const MANY = { seed: 1, maxSchedules: 20_000 };

function task(id: string, minutes: number, value: number, more: Partial<ServiceTask> = {}): ServiceTask {
  const duration = { low: minutes, likely: minutes, high: minutes };
  return { id, car: 'car 7', ways: [{ id: 'usual', duration, crew: [{ count: 1 }], value }], ...more };
}

function serviceWith(latest: number, ...tasks: ServiceTask[]): Service {
  return {
    cars: [{ id: 'car 7', inTime: 0, outTime: 10, latest }],
    people: [{ id: 'Ada', skills: [], hours: [{ from: 0, until: 30 }] }],
    places: [],
    tools: [],
    accesses: [],
    tasks,
  };
}

function why(service: Service, id: string) {
  const { plan, proven } = openPlanning(service, MANY).step(MANY.maxSchedules);
  if (!plan || !proven) throw new Error('There is no proven plan.');
  expect(plan.left).toContain(id);
  return whyLeft(service, plan, id, MANY);
}

describe('whyLeft', () => {
  const must = task('pads', 4, 0, { mandatory: true });

  it('tells by how much later the cars would be', () => {
    expect(why(serviceWith(20, must, task('wash', 9, 5)), 'wash')).toMatchObject({
      kind: 'later',
      by: 3,
      certain: true,
      sentence: 'With wash the cars would be 3 later.',
    });
  });

  it('tells what is done instead that is worth more', () => {
    expect(why(serviceWith(10, must, task('wash', 5, 2), task('lamps', 6, 5)), 'wash')).toMatchObject({
      kind: 'lessValue',
      by: 3,
      instead: ['lamps'],
      sentence: 'With wash the work done would be worth 3 less, since lamps would be left.',
    });
  });

  it('tells that it is worth nothing, or why it can never be done', () => {
    expect(why(serviceWith(10, must, task('look', 2, 0)), 'look')?.kind).toBe('noBetter');
    expect(why(serviceWith(10, task('wash', 8, 5, { notBefore: 3 })), 'wash')).toMatchObject({
      kind: 'impossible',
      sentence: "wash can't be done. wash can't start before 3. car 7 must be finished by 10.",
    });
    const service = serviceWith(10, must, task('look', 2, 0));
    const plan = { work: [], left: [], objective: { late: 0, value: 0, finish: 0, handOvers: 0 } };
    expect(() => whyLeft(service, plan, 'seats', MANY)).toThrow('seats is not a task of this service');
  });
});
