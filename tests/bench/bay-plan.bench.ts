import { checkBayPlan, openPlanning, type PlanningResult, type Service } from '@halfshaft/bayplan';
import { busyService } from './busy-service';

const SECONDS = 10;
const STEP = 20;

/** Milliseconds, counted from the opening of the search, until something first holds; nothing if it never did. */
interface Times {
  firstPlan?: number;
  allValue?: number;
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
    if (objective !== known) times.lastBetter = now;
    known = objective;
    if (result.proven) times.proven ??= now;
    if (result.proven || now > 1000 * SECONDS) return { times, result };
  }
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
    `  first plan ${inWords(times.firstPlan)}; last better ${inWords(times.lastBetter)}; proof ${inWords(times.proven)}`,
  );
  console.log(
    `  ${result.schedules} schedules; best ${JSON.stringify(result.plan?.objective)}; bound ${JSON.stringify(result.bound)}`,
  );
}
