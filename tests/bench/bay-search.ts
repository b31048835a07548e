import { checkBayPlan, openPlanning, type PlanningResult, type Service } from '@halfshaft/bayplan';
import { chanceFrom } from '../faults/chance';
import { busyService } from './busy-service';
import { variedService } from './varied-service';

/** Of the processor, which another process beside does not lengthen. */
const SECONDS = [1, 3, 10];
const SEEDS = [1, 2, 3];
const STEP = 20;
const SIZES = [
  { tasks: 36, cars: 1, people: 3 },
  { tasks: 48, cars: 2, people: 5 },
  { tasks: 60, cars: 1, people: 6 },
  { tasks: 60, cars: 2, people: 6 },
  { tasks: 60, cars: 3, people: 7 },
  { tasks: 80, cars: 2, people: 8 },
];

/** How far one search has come after each of the seconds; a plan must keep every rule. */
function measure(service: Service, seed: number): PlanningResult[] {
  const before = process.cpuUsage();
  const search = openPlanning(service, { seed });
  return SECONDS.map((seconds) => {
    for (;;) {
      const result = search.step(STEP);
      const { user, system } = process.cpuUsage(before);
      if (!result.proven && user + system < 1_000_000 * seconds) continue;
      const [fault] = result.plan ? checkBayPlan(service, result.plan) : [];
      if (fault) throw new Error(fault.sentence);
      return result;
    }
  });
}

function inWords({ plan, bound, proven }: PlanningResult): string {
  if (!plan) return 'no plan';
  const { late, value } = plan.objective;
  return `${late > 0 ? `${late} late` : value}/${bound.value ?? '?'}${proven ? ' proven' : ''}`;
}

const services = [
  ...[1, 2]
    .map((cars) => ({ tasks: 60, cars, people: 6 }))
    .map((size) => ({ size, name: 'busy', service: busyService(size) })),
  ...SIZES.map((size, place) => ({
    size,
    name: 'varied',
    service: variedService(size, chanceFrom(place + 1)),
  })),
];
console.log(`Value / bound after ${SECONDS.join(', ')} s of the processor, seeds ${SEEDS.join(', ')}:`);
for (const { name, size, service } of services) {
  const rows = SEEDS.map((seed) => measure(service, seed));
  const columns = SECONDS.map((_, column) =>
    rows
      .flatMap((row) => row[column] ?? [])
      .map(inWords)
      .join(', '),
  );
  console.log(
    `  ${name}, ${size.tasks} tasks, ${size.cars} cars, ${size.people} people: ${columns.join(' | ')}`,
  );
}
