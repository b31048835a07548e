import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import {
  type BayPlan,
  checkBayPlan,
  openPlanning,
  type PlanningResult,
  type Progress,
  replan,
  type Service,
  simulatePlan,
} from '@halfshaft/bayplan';
import { busyService } from './busy-service';
import { medianOf, ROUNDS } from './median-of';

const SECONDS = 10;
const STEP = 20;

/** Milliseconds, counted from the opening of the search, until something first holds; nothing if it never did. */
interface Times {
  firstPlan?: number;
  /** On time, worth at most a hundredth less than the bound. */
  nearBound?: number;
  lastBetter?: number;
  proven?: number;
}

function run(service: Service): { times: Times; result: PlanningResult } {
  const since = performance.now();
  const search = openPlanning(service, { seed: 1 });
  const times: Times = {};
  let known = '';
  for (;;) {
    const result = search.step(STEP);
    const now = performance.now() - since;
    const objective = JSON.stringify(result.plan?.objective);
    if (result.plan) times.firstPlan ??= now;
    if (isNearBound(result)) times.nearBound ??= now;
    if (objective !== known) times.lastBetter = now;
    known = objective;
    if (result.proven) times.proven ??= now;
    if (result.proven || now > 1000 * SECONDS) return { times, result };
  }
}

function isNearBound({ plan, bound }: PlanningResult): boolean {
  if (plan?.objective.late !== 0 || bound.value === undefined) return false;
  return plan.objective.value >= 0.99 * bound.value;
}

function inWords(milliseconds: number | undefined): string {
  return milliseconds === undefined ? `not within ${SECONDS} s` : `${milliseconds.toFixed(0)} ms`;
}

for (const size of [
  { tasks: 12, cars: 1, people: 2 },
  { tasks: 24, cars: 2, people: 4 },
  { tasks: 60, cars: 1, people: 6 },
  { tasks: 60, cars: 2, people: 6 },
]) {
  const service = busyService(size);
  const { times, result } = run(service);
  const faults = result.plan ? checkBayPlan(service, result.plan) : [];
  if (faults[0]) throw new Error(faults[0].sentence);
  console.log(`${size.tasks} tasks, ${size.cars} cars, ${size.people} people, 20 minutes each:`);
  console.log(
    `  first plan ${inWords(times.firstPlan)}; value within 1 % of the bound ${inWords(times.nearBound)}; last better ${inWords(times.lastBetter)}; proof ${inWords(times.proven)}`,
  );
  console.log(
    `  ${result.schedules} schedules; best ${JSON.stringify(result.plan?.objective)}; bound ${JSON.stringify(result.bound)}`,
  );
}

/** The plan as far as it would have come by then, with what is under way begun a minute and a half late. */
function playUntil({ work }: BayPlan, now: number): Progress[] {
  return work.flatMap(({ task, way, start, finish, people }): Progress[] => {
    if (finish <= now) return [{ task, state: 'done', way, since: start, until: finish }];
    if (start + LATE > now) return [];
    return [
      { task, state: 'underWay', way, since: start + LATE, people: people.map(({ person }) => person) },
    ];
  });
}

const LATE = 90;
const NOW = 500;
const RUNS = 2000;

/** On the clock, and of the processor, which another process beside does not lengthen. */
function millisecondsOf(work: () => unknown): { clock: number; processor: number } {
  const rounds = Array.from({ length: ROUNDS }, () => {
    const [since, before] = [performance.now(), process.cpuUsage()];
    work();
    const { user, system } = process.cpuUsage(before);
    return { clock: performance.now() - since, processor: (user + system) / 1000 };
  });
  return {
    clock: medianOf(rounds.map(({ clock }) => clock)),
    processor: medianOf(rounds.map(({ processor }) => processor)),
  };
}

for (const size of [
  { tasks: 24, cars: 2, people: 4 },
  { tasks: 60, cars: 1, people: 6 },
  { tasks: 60, cars: 2, people: 6 },
]) {
  const service = busyService(size);
  const { plan } = openPlanning(service, { seed: 1 }).step(1000);
  if (!plan) throw new Error('No plan to play through.');
  const simulation = millisecondsOf(() => simulatePlan(service, plan, { seed: 1, runs: RUNS }));
  console.log(`${size.tasks} tasks, ${size.cars} cars, ${size.people} people, plan of 1000 schedules:`);
  console.log(`  ${((1000 * RUNS) / simulation.clock).toFixed(0)} simulations a second`);
  const progress = playUntil(plan, NOW);
  for (const schedules of [50, 100, 200, 500]) {
    const options = { seed: 1, schedules, unitsPerMinute: 60 };
    const { clock, processor } = millisecondsOf(() => replan(service, plan, NOW, progress, options));
    const { kind, sentence } = replan(service, plan, NOW, progress, options);
    const times = `${clock.toFixed(0)} ms, of the processor ${processor.toFixed(0)}`;
    console.log(`  re-plan with ${schedules} schedules: ${times}; ${kind}: ${sentence}`);
  }
}

/** Of a process that has just collected its garbage. */
function heapMegabytes(): number {
  setFlagsFromString('--expose-gc');
  runInNewContext('gc')();
  return process.memoryUsage().heapUsed / 1_048_576;
}

const small = busyService({ tasks: 12, cars: 1, people: 2 });
for (let solve = 1; solve <= 1000; solve += 1) {
  openPlanning(small, { seed: solve }).step(150);
  if (solve % 300 === 100) console.log(`heap after ${solve} solves: ${heapMegabytes().toFixed(1)} MB`);
}
