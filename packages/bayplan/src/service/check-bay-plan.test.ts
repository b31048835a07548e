import { describe, expect, it } from 'vitest';
import type { BayPlan, PlannedWork } from './bay-plan';
import { type BayPlanFault, checkBayPlan } from './check-bay-plan';
import type { Service, ServiceTask, Way } from './service-model';

function way(minutes: number, more: Partial<Way> = {}): Way {
  return {
    id: 'usual',
    duration: { low: minutes, likely: minutes, high: minutes },
    crew: [{ count: 1 }],
    ...more,
  };
}

function task(
  id: string,
  minutes: number,
  more: Partial<ServiceTask> = {},
  how: Partial<Way> = {},
): ServiceTask {
  return { id, car: 'car', mandatory: true, ways: [way(minutes, how)], ...more };
}

/** Up on stands, pads and a look by two people, down, torque on its wheels; fuel at the end; a wash if there is time. */
const SERVICE: Service = {
  cars: [{ id: 'car', inTime: 0, outTime: 15, latest: 20, hotUntil: 2 }],
  people: [
    { id: 'Ada', skills: ['brakes'], hours: [{ from: 0, until: 20 }] },
    {
      id: 'Ben',
      skills: [],
      hours: [
        { from: 0, until: 12 },
        { from: 13, until: 20 },
      ],
    },
  ],
  places: [{ id: 'front', room: 1 }],
  tools: [{ id: 'gun', count: 1 }],
  accesses: [{ id: 'stands', car: 'car', opening: 'up', closing: 'down' }],
  tasks: [
    task('up', 1, { mandatory: false }),
    task(
      'pads',
      4,
      { open: ['stands'], cold: true },
      { crew: [{ skill: 'brakes', count: 1 }], place: 'front', value: 2 },
    ),
    task('look', 3, { open: ['stands'] }),
    task('down', 1, { mandatory: false }),
    task(
      'torque',
      2,
      { closed: ['stands'], after: [{ task: 'pads', lag: 1, maxLag: 6 }] },
      { tools: ['gun'] },
    ),
    task('fuel', 2, { fuelOpen: true, pin: { start: 13 } }),
    task('wash', 3, { mandatory: false }),
  ],
};

function work(id: string, start: number, finish: number, person: string, skill?: string): PlannedWork {
  return {
    task: id,
    way: 'usual',
    start,
    finish,
    people: [skill === undefined ? { person } : { person, skill }],
  };
}

const GOOD: readonly PlannedWork[] = [
  work('up', 0, 1, 'Ben'),
  work('pads', 2, 6, 'Ada', 'brakes'),
  work('look', 1, 4, 'Ben'),
  work('down', 6, 7, 'Ben'),
  work('torque', 7, 9, 'Ben'),
  work('fuel', 13, 15, 'Ben'),
];
const PLAN: BayPlan = {
  work: GOOD,
  left: ['wash'],
  objective: { late: 0, value: 2, finish: 15, handOvers: 1 },
};

/** With some tasks done otherwise; the objective need not be right. */
function kindsWith(service: Service, ...changed: readonly PlannedWork[]): BayPlanFault['kind'][] {
  const plan = { ...PLAN, work: GOOD.map((one) => changed.find(({ task: id }) => id === one.task) ?? one) };
  return checkBayPlan(service, plan)
    .map(({ kind }) => kind)
    .filter((kind) => kind !== 'objective');
}

function serviceWith(id: string, more: Partial<ServiceTask>): Service {
  return { ...SERVICE, tasks: SERVICE.tasks.map((one) => (one.id === id ? { ...one, ...more } : one)) };
}

describe('checkBayPlan', () => {
  it('finds nothing wrong with a plan that keeps every rule', () => {
    expect(checkBayPlan(SERVICE, PLAN)).toEqual([]);
  });

  it('says in a sentence what is wrong', () => {
    const plan = {
      ...PLAN,
      work: GOOD.map((one) => (one.task === 'look' ? work('look', 2, 5, 'Ada') : one)),
    };
    expect(checkBayPlan(SERVICE, plan)).toEqual([
      { kind: 'personTwice', sentence: 'Ada does pads from 2 to 6 and look from 2 to 5.' },
    ]);
  });

  it('finds what is missing, twice or not of this service', () => {
    const kinds = (plan: BayPlan) => checkBayPlan(SERVICE, plan).map(({ kind }) => kind);
    expect(kinds({ ...PLAN, left: [] })).toEqual(['missing']);
    expect(kinds({ ...PLAN, left: ['wash', 'look'] })).toEqual(['twice']);
    expect(kinds({ ...PLAN, left: ['wash', 'polish'] })).toEqual(['unknown']);
    expect(kindsWith(SERVICE, { ...work('look', 1, 4, 'Ben'), way: 'quick' })).toEqual(['unknown', 'crew']);
  });

  it('finds what must be done or must be left', () => {
    const without = (id: string): BayPlan => ({
      ...PLAN,
      work: GOOD.filter((one) => one.task !== id),
      left: ['wash', id],
    });
    expect(checkBayPlan(SERVICE, without('look'))).toContainEqual({
      kind: 'mustBeDone',
      sentence: 'look is left, but must be done.',
    });
    expect(checkBayPlan(SERVICE, without('down')).map(({ kind }) => kind)).toContain('mustBeDone');
    expect(kindsWith(serviceWith('look', { mandatory: false, pin: { done: false } }))).toEqual([
      'mustNotBeDone',
    ]);
    expect(kindsWith(serviceWith('wash', { pin: { done: true } }))).toEqual(['mustBeDone']);
    expect(kindsWith(serviceWith('wash', { after: [{ task: 'look', together: true }] }))).toEqual([
      'mustBeDone',
    ]);
    expect(
      kindsWith(serviceWith('fuel', { pin: { start: 13 }, after: [{ task: 'wash', together: true }] })),
    ).toEqual(['mustNotBeDone']);
    const unused = serviceWith('pads', { open: [] });
    const tasks = unused.tasks.map((one) => (one.id === 'look' ? { ...one, open: [] } : one));
    expect(kindsWith({ ...unused, tasks })).toEqual(['mustNotBeDone', 'mustNotBeDone']);
    const underWay = { since: 0, until: 1, way: 'usual', people: ['Ben'] };
    const begun = tasks.map((one) => (one.id === 'up' ? { ...one, underWay } : one));
    expect(kindsWith({ ...unused, tasks: begun })).toEqual([]);
  });

  it('finds wrong times', () => {
    expect(kindsWith(SERVICE, work('look', 1.5, 4.5, 'Ben'))).toContain('notWhole');
    expect(kindsWith(SERVICE, work('look', 1, 3, 'Ben'))).toEqual(['duration']);
    expect(kindsWith(SERVICE, work('pads', 1, 5, 'Ada', 'brakes'))).toEqual(['tooEarly']);
    expect(kindsWith(serviceWith('look', { open: ['stands'], notBefore: 2 }))).toEqual(['tooEarly']);
    expect(kindsWith(SERVICE, work('up', -1, 0, 'Ben'))).toEqual(['tooEarly', 'hours']);
    expect(kindsWith(SERVICE, work('torque', 19, 21, 'Ada'))).toEqual(['tooLate', 'tooLate', 'hours']);
    expect(kindsWith(SERVICE, work('torque', 13, 15, 'Ada'))).toEqual(['tooLate', 'fuelOpen']);
    expect(kindsWith(SERVICE, work('fuel', 12, 14, 'Ada'))).toEqual(['pin']);
  });

  it('finds a link that is not kept, with its lag', () => {
    const linked = serviceWith('look', { open: ['stands'], after: [{ task: 'up', lag: 1 }] });
    expect(kindsWith(linked)).toEqual(['tooEarly']);
    expect(kindsWith(linked, work('look', 2, 5, 'Ben'))).toEqual([]);
  });

  it('finds wrong people, hours and crews', () => {
    expect(kindsWith(SERVICE, { ...work('pads', 2, 6, 'Ada'), people: [] })).toEqual(['crew']);
    expect(kindsWith(SERVICE, work('down', 6, 7, 'Cyd'))).toEqual(['crew', 'hours']);
    expect(kindsWith(SERVICE, work('down', 6, 7, 'Ben', 'brakes'))).toEqual(['crew', 'crew', 'crew']);
    const twice = { ...work('down', 6, 7, 'Ben'), people: [{ person: 'Ben' }, { person: 'Ben' }] };
    expect(kindsWith(SERVICE, twice)).toEqual(['crew', 'crew']);
    expect(kindsWith(SERVICE, work('torque', 11, 13, 'Ben'))).toEqual(['hours']);
    expect(kindsWith(serviceWith('look', { open: ['stands'], pin: { people: ['Ada'] } }))).toEqual(['pin']);
    expect(kindsWith(serviceWith('look', { open: ['stands'], pin: { way: 'quick' } }))).toEqual(['pin']);
  });

  it('finds tools and places that are too small, at the moment when they are', () => {
    const gun = serviceWith('look', { ways: [way(3, { tools: ['gun', 'gun'] })] });
    // Both when it starts and when the pads start beside it.
    expect(kindsWith(gun)).toEqual(['tools', 'tools']);
    const crowded = serviceWith('look', { open: ['stands'], ways: [way(3, { place: 'front' })] });
    expect(checkBayPlan(crowded, PLAN)).toEqual([
      { kind: 'room', sentence: 'At 2, 2 people are at front, which has room for 1.' },
    ]);
  });

  it('finds work on stands that is not on stands, and work on its wheels that is not', () => {
    expect(kindsWith(SERVICE, work('down', 5, 6, 'Ben'))).toEqual(['access']);
    expect(kindsWith(serviceWith('fuel', { pin: { start: 13 }, open: ['stands'] }))).toEqual(['access']);
    expect(kindsWith(serviceWith('look', { closed: ['stands'] }))).toEqual(['access']);
    const openAlready: Service = { ...SERVICE, accesses: [{ id: 'stands', car: 'car', closing: 'down' }] };
    expect(kindsWith(openAlready)).toEqual([]);
    const early = {
      ...openAlready,
      tasks: openAlready.tasks.map((one) => (one.id === 'up' ? task('up', 1, { closed: ['stands'] }) : one)),
    };
    expect(kindsWith(early)).toEqual(['access']);
  });

  it('finds that something is closed before it is open, also when nothing needs it open', () => {
    const underWay = { since: 0, until: 1, way: 'usual', people: ['Ben'] };
    const { tasks } = serviceWith('up', { mandatory: false, underWay });
    const unused = { ...SERVICE, tasks: tasks.map((one) => ({ ...one, open: [] })) };
    const early = GOOD.map((one) => (one.task === 'down' ? work('down', 0, 1, 'Ada') : one));
    expect(checkBayPlan(unused, { ...PLAN, work: early })).toEqual([
      { kind: 'access', sentence: 'down starts at 0, but stands is not open before 1.' },
    ]);
  });

  it('finds work beside open fuel, and other work than what is under way', () => {
    expect(kindsWith(serviceWith('look', { open: ['stands'], fuelOpen: true }))).toEqual(['fuelOpen']);
    const underWay = { since: 0, until: 1, way: 'usual', people: ['Ben'] };
    expect(kindsWith(serviceWith('up', { mandatory: false, underWay }))).toEqual([]);
    expect(
      kindsWith(serviceWith('up', { mandatory: false, underWay: { ...underWay, people: ['Ada'] } })),
    ).toEqual(['pin']);
    expect(kindsWith(serviceWith('up', { mandatory: false, underWay: { ...underWay, since: -1 } }))).toEqual([
      'pin',
    ]);
  });

  it('finds an objective that is not that of the plan', () => {
    const wrong = { late: 1, value: 3, finish: 14, handOvers: 0 };
    expect(checkBayPlan(SERVICE, { ...PLAN, objective: wrong })).toHaveLength(4);
  });
});
