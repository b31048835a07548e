import type { CompiledService, CompiledTask } from '../compile-service';
import { listForced } from './list-forced';
import { listSupplies, type Supply } from './list-supplies';

/**
 * When the cars are finished at least, all together, in any plan worth so much: by how much work it takes at least to be
 * worth that (the least work for a value, with shares of tasks allowed, is a fractional knapsack: Dantzig 1957), and how
 * much of it can be done at a time. The car that is finished last waits for the work at all of them.
 */
export function boundFinish(service: CompiledService, value: number): number {
  const supplies = listSupplies(service);
  const forced = listForced(service);
  const finishOf = (tasks: readonly CompiledTask[], from: number) => {
    const others = service.tasks.filter((task) => !tasks.includes(task));
    const wanted = value - others.reduce((sum, task) => sum + mostValue(task), 0);
    const lengths = supplies.map((supply) => leastLength(tasks, forced, supply, wanted));
    return from + Math.max(0, ...lengths);
  };
  const alone = service.cars.map(({ inTime }, car) =>
    finishOf(
      service.tasks.filter((task) => task.car === car),
      inTime,
    ),
  );
  const sum = alone.reduce((all, one) => all + one, 0);
  const first = Math.min(...service.cars.map(({ inTime }) => inTime));
  return service.cars.length === 0
    ? 0
    : Math.max(sum, sum - Math.max(...alone) + finishOf(service.tasks, first));
}

/** What is under way takes nothing of the time that is left, as some of it may lie before the in-time. */
function leastLength(
  tasks: readonly CompiledTask[],
  forced: ReadonlySet<number>,
  supply: Supply,
  wanted: number,
): number {
  if (supply.most === 0) return 0;
  let missing = wanted;
  let work = 0;
  const optional: { value: number; work: number }[] = [];
  for (const task of tasks) {
    const one = { value: mostValue(task), work: task.underWay ? 0 : leastWork(task, supply) };
    if (forced.has(task.number)) {
      missing -= one.value;
      work += one.work;
    } else if (one.value > 0) optional.push(one);
  }
  for (const one of optional.toSorted((left, right) => left.work / left.value - right.work / right.value)) {
    if (missing <= 0) break;
    work += one.work * Math.min(1, missing / one.value);
    missing -= one.value;
  }
  return Math.ceil(work / supply.most - ROUNDING);
}

/** What arithmetic may add to a whole number must not cost another whole unit. */
const ROUNDING = 1e-9;

function mostValue({ mustNot, ways }: CompiledTask): number {
  return mustNot ? 0 : Math.max(0, ...ways.map(({ value }) => value));
}

function leastWork(task: CompiledTask, { amountFor }: Supply): number {
  const { ways } = task;
  return ways.length === 0 ? 0 : Math.min(...ways.map((way) => way.duration * amountFor(way, task)));
}
