import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BayPlan } from '../bay-plan';
import { checkBayPlan } from '../check-bay-plan';
import { anyService } from '../fixtures';
import { openPlanning } from '../search/open-planning';
import type { Service, ServiceTask } from '../service-model';
import { carryPlan } from './carry-plan';
import type { Progress } from './progress';
import { type Proposal, replan } from './replan';

const OPTIONS = { seed: 1, schedules: 300, unitsPerMinute: 1 };

function task(id: string, minutes: number, more: Partial<ServiceTask> = {}, value = 0): ServiceTask {
  const duration = { low: minutes, likely: minutes, high: minutes };
  return {
    id,
    car: 'car',
    mandatory: value === 0,
    ways: [{ id: 'usual', duration, value, crew: [{ count: 1 }] }],
    ...more,
  };
}

const SERVICE: Service = {
  cars: [{ id: 'car', inTime: 0, outTime: 20, latest: 35 }],
  people: ['Ada', 'Ben'].map((id) => ({ id, skills: [], hours: [{ from: 0, until: 100 }] })),
  places: [],
  tools: [],
  accesses: [],
  tasks: [task('pads', 6), task('hubs', 8), task('oil', 6), task('belts', 8), task('wash', 4, {}, 3)],
};

function at(id: string, start: number, finish: number, person: string) {
  return { task: id, way: 'usual', start, finish, people: [{ person }] };
}

/** Ada: pads, hubs, wash to 18. Ben: oil, belts to 14. */
const PLAN: BayPlan = {
  work: [
    at('pads', 0, 6, 'Ada'),
    at('hubs', 6, 14, 'Ada'),
    at('oil', 0, 6, 'Ben'),
    at('belts', 6, 14, 'Ben'),
    at('wash', 14, 18, 'Ada'),
  ],
  left: [],
  objective: { late: 0, value: 3, finish: 18, handOvers: 0 },
};

function underWay(id: string, since: number, person: string): Progress {
  return { task: id, state: 'underWay', way: 'usual', since, people: [person] };
}

function done(id: string, since: number, until: number): Progress {
  return { task: id, state: 'done', way: 'usual', since, until };
}

function planOf(proposal: Proposal): BayPlan {
  if (proposal.kind === 'noPlan' || proposal.kind === 'unclear') throw new Error(proposal.sentence);
  expect(checkBayPlan(proposal.service, proposal.plan)).toEqual([]);
  return proposal.plan;
}

describe('replan', () => {
  it('keeps to a plan that goes well, and to one that runs over but still fits', () => {
    expect(checkBayPlan(SERVICE, PLAN)).toEqual([]);
    const well = replan(SERVICE, PLAN, 4, [underWay('pads', 0, 'Ada'), underWay('oil', 0, 'Ben')], OPTIONS);
    expect(well).toMatchObject({
      kind: 'keep',
      changes: [],
      sentence: 'Work goes as planned. Keep to the plan: the car leaves on time.',
    });
    const over = replan(SERVICE, PLAN, 8, [done('pads', 0, 8), underWay('oil', 0, 'Ben')], OPTIONS);
    expect(over).toMatchObject({ kind: 'keep', changes: [] });
    expect(planOf(over).work.find((one) => one.task === 'wash')).toEqual(at('wash', 16, 20, 'Ada'));
  });

  it('moves one person for one job when that saves the out-time, and nobody else', () => {
    // Pads took 10: Ada would wash to 22. Ben is free from 14.
    const proposal = replan(
      SERVICE,
      PLAN,
      10,
      [done('pads', 0, 10), done('oil', 0, 6), underWay('belts', 6, 'Ben')],
      OPTIONS,
    );
    expect(proposal).toMatchObject({
      kind: 'change',
      changes: [{ kind: 'people', task: 'wash', instead: ['Ada'], people: ['Ben'] }],
      sentence:
        'pads was finished 4 min late. Kept as it is, the car leaves 2 min late. Ben does wash instead of Ada. Then the car leaves on time.',
    });
    expect(planOf(proposal).objective).toMatchObject({ late: 0, value: 3 });
  });

  it('drops what is optional rather than leave late', () => {
    const [first] = SERVICE.people;
    if (!first) throw new Error('There are two people.');
    const alone = {
      ...SERVICE,
      people: [first],
      tasks: [task('pads', 6), task('hubs', 8), task('wash', 4, {}, 3)],
    };
    const plan: BayPlan = {
      work: [at('pads', 0, 6, 'Ada'), at('hubs', 6, 14, 'Ada'), at('wash', 14, 18, 'Ada')],
      left: [],
      objective: { late: 0, value: 3, finish: 18, handOvers: 0 },
    };
    const proposal = replan(alone, plan, 9, [done('pads', 0, 9)], OPTIONS);
    expect(proposal).toMatchObject({ kind: 'change', changes: [{ kind: 'left', task: 'wash' }] });
    const idle = replan(
      alone,
      { ...plan, work: plan.work.slice(0, 2), left: ['wash'] },
      6,
      [done('pads', 0, 6)],
      OPTIONS,
    );
    expect(idle).toMatchObject({ changes: [{ kind: 'taken', task: 'wash', people: ['Ada'] }] });
    expect(planOf(idle).objective).toMatchObject({ late: 0, value: 3 });
  });

  it('takes an opening that nobody logged for done, and plans nothing before now', () => {
    const service: Service = {
      ...SERVICE,
      accesses: [{ id: 'stands', car: 'car', opening: 'up', closing: 'down' }],
      tasks: [
        task('up', 1, { mandatory: false }),
        task('pads', 6, { open: ['stands'] }),
        task('hubs', 8, { open: ['stands'] }),
        task('down', 1, { mandatory: false }),
      ],
    };
    const { plan } = openPlanning(service, { seed: 1 }).step(2000);
    if (!plan) throw new Error('There is a plan.');
    const pads = plan.work.find((one) => one.task === 'pads');
    const proposal = replan(service, plan, 5, [underWay('pads', 3, pads?.people[0]?.person ?? '')], OPTIONS);
    const work = planOf(proposal).work;
    expect(work.find((one) => one.task === 'up')).toMatchObject({ start: 2, finish: 3, people: [] });
    expect(work.find((one) => one.task === 'hubs')?.start).toBeGreaterThanOrEqual(5);
    // By a clock that goes wrong all lies in the future: the closing still comes after the opening.
    const over = [done('pads', 21, 22), done('hubs', 21, 23), done('down', 23, 24)];
    expect(planOf(replan(service, plan, 10, over, OPTIONS)).work).toHaveLength(4);
  });

  it('leaves what should have come before something begun, unless it must be done', () => {
    const withLook = (look: ServiceTask) => ({
      ...SERVICE,
      tasks: [look, task('pads', 6, { after: [{ task: 'look' }] })],
    });
    const plan: BayPlan = {
      work: [at('look', 0, 1, 'Ada'), at('pads', 1, 7, 'Ada')],
      left: [],
      objective: { late: 0, value: 2, finish: 7, handOvers: 0 },
    };
    const progress = [underWay('pads', 0, 'Ada')];
    const proposal = replan(withLook(task('look', 1, {}, 2)), plan, 3, progress, OPTIONS);
    expect(proposal).toMatchObject({ kind: 'change', changes: [{ kind: 'left', task: 'look' }] });
    const must = planOf(replan(withLook(task('look', 1)), plan, 3, progress, OPTIONS));
    expect(must.work.find((one) => one.task === 'look')?.start).toBeGreaterThanOrEqual(3);
  });

  it('says so when the log contradicts itself, or nothing is possible any more', () => {
    const twice = replan(SERVICE, PLAN, 5, [underWay('pads', 0, 'Ada'), underWay('oil', 1, 'Ada')], OPTIONS);
    expect(twice).toEqual({
      kind: 'unclear',
      sentence: "The log can't be right: Ada can't be doing pads and oil at a time.",
    });
    const tooLate = replan(SERVICE, PLAN, 30, [], OPTIONS);
    expect(tooLate).toMatchObject({ kind: 'noPlan' });
    expect(tooLate.sentence).toContain('pads should have started 30 min ago. No plan was found');
  });

  it('gives a plan that keeps every rule, never worse than the old one kept, the same for the same seed', () => {
    let proposals = 0;
    fc.assert(
      fc.property(anyService({ most: 6 }), fc.nat(), fc.nat(8), fc.nat(6), (tight, seed, now, slow) => {
        const service = withMoreTime(tight);
        const { plan } = openPlanning(service, { seed }).step(150);
        if (!plan) return;
        const progress = playUntil(plan, now, slow);
        const options = { seed, schedules: 60, unitsPerMinute: 1 };
        const proposal = replan(service, plan, now, progress, options);
        expect(replan(service, plan, now, progress, options)).toEqual(proposal);
        if (proposal.kind === 'noPlan' || proposal.kind === 'unclear') return;
        proposals += 1;
        expect(checkBayPlan(proposal.service, proposal.plan)).toEqual([]);
        const kept = carryPlan(proposal.service, plan)?.objective.late ?? Number.POSITIVE_INFINITY;
        expect(proposal.plan.objective.late).toBeLessThanOrEqual(kept);
        for (const { task: id, start } of proposal.plan.work) {
          const begun = proposal.service.tasks.find((one) => one.id === id)?.underWay;
          if (!begun) expect(start).toBeGreaterThanOrEqual(now);
        }
      }),
      { numRuns: 150 },
    );
    expect(proposals).toBeGreaterThan(6);
  });

  it('keeps a plan that waits for the end of a break', () => {
    const task = (id: string, likely: number, skill?: string): Service['tasks'][number] => {
      const crew = [{ count: 1, ...(skill ? { skill } : {}) }];
      const duration = { low: likely, likely, high: likely };
      return { id, car: 'car', mandatory: true, ways: [{ id: 'usual', duration, crew }] };
    };
    const service: Service = {
      cars: [{ id: 'car', inTime: 2, outTime: 9, latest: 9 }],
      people: ['engine', 'brakes'].map((skill) => ({
        id: skill,
        skills: [skill],
        hours: [
          { from: 0, until: 4 },
          { from: 5, until: 30 },
        ],
      })),
      places: [],
      tools: [],
      accesses: [],
      tasks: [
        { ...task('refuel', 1), fuelOpen: true },
        task('short', 1, 'brakes'),
        task('long', 4, 'engine'),
      ],
    };
    const { plan, proven } = openPlanning(service, { seed: 1 }).step(5000);
    if (!plan || !proven) throw new Error('Such a small service is planned at once.');
    const long = plan.work.find(({ task: id }) => id === 'long');
    expect([long?.start, long?.finish]).toEqual([5, 9]);
    expect(carryPlan(service, plan)?.objective).toEqual(plan.objective);
  });

  it('changes nothing of a proven plan that goes to the minute', () => {
    let kept = 0;
    fc.assert(
      fc.property(anyService(), fc.nat(), fc.nat(8), (service, seed, now) => {
        const exact = withoutSpread(service);
        const { plan, proven } = openPlanning(exact, { seed }).step(20_000);
        if (!plan || !proven || plan.objective.late > 0) return;
        // Once its time is over such a task may be done at any other, which the plan could not know.
        if (exact.tasks.some(({ id, pin }) => plan.left.includes(id) && (pin?.start ?? now) < now)) return;
        const proposal = replan(exact, plan, now, playUntil(plan, now, 0), { ...OPTIONS, schedules: 60 });
        if (proposal.kind !== 'keep') expect(proposal).toMatchObject({ kind: 'keep' });
        kept += 1;
      }),
      { numRuns: 50 },
    );
    expect(kept).toBeGreaterThan(3);
  });
});

/** Every task as planned, but what would be done now takes so much longer if it has begun. */
function playUntil({ work }: BayPlan, now: number, slow: number): Progress[] {
  return work
    .filter(({ start }) => start < now)
    .map(({ task: id, way, start, finish, people }): Progress => {
      if (finish + slow <= now) return { task: id, state: 'done', way, since: start, until: finish };
      return { task: id, state: 'underWay', way, since: start, people: people.map(({ person }) => person) };
    });
}

/** Leaving late is allowed, so that there is mostly a plan. */
function withMoreTime(service: Service): Service {
  return { ...service, cars: service.cars.map((car) => ({ ...car, latest: car.outTime + 20 })) };
}

/** What takes one number, and hasn't begun. */
function withoutSpread(service: Service): Service {
  const tasks = service.tasks.map(({ underWay: _, ...one }) => ({
    ...one,
    ways: one.ways.map((way) => ({
      ...way,
      duration: { low: way.duration.likely, likely: way.duration.likely, high: way.duration.likely },
    })),
  }));
  return { ...service, tasks };
}
