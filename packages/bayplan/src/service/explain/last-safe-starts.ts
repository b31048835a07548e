import type { BayPlan } from '../bay-plan';
import { type Done, lagBetween, listDone } from '../order/plan-order';
import type { Service, ServiceTask } from '../service-model';

/**
 * By when each task of a plan must start so that, with everything else done by the same people in the same order, its car
 * is still finished by its out-time (or no later than planned, where that is later). Nothing is said of what is under
 * way.
 *
 * Which tasks keep their order: see {@link lagBetween}.
 *
 * @param plan one that {@link checkBayPlan} finds nothing wrong with
 * @example
 * lastSafeStarts(service, plan).get('pads') // 14: "start by 14 or drop it"
 */
export function lastSafeStarts(service: Service, plan: BayPlan): Map<string, number> {
  const done = listDone(service, plan).toSorted((one, other) => other.work.start - one.work.start);
  const latest = new Map<string, number>();
  for (const one of done) latest.set(one.task.id, lastStart(service, one, done, latest));
  for (const { task } of done) if (task.underWay) latest.delete(task.id);
  return latest;
}

/** The tasks after it are settled already. */
function lastStart(
  service: Service,
  one: Done,
  done: readonly Done[],
  latest: ReadonlyMap<string, number>,
): number {
  const { task, work } = one;
  const duration = work.finish - work.start;
  if (task.underWay || task.pin?.start !== undefined) return work.start;
  let finish = Math.min(dueOf(service, task, done), endOfHours(service, one));
  for (const other of done) {
    if (other.work.start < work.finish) continue;
    const lag = lagBetween(service, one, other);
    if (lag !== undefined) finish = Math.min(finish, (latest.get(other.task.id) ?? other.work.start) - lag);
  }
  return Math.min(finish - duration, latestByLags(task, done));
}

function dueOf({ cars }: Service, { car }: ServiceTask, done: readonly Done[]): number {
  const outTime = cars.find(({ id }) => id === car)?.outTime ?? 0;
  return Math.max(outTime, ...done.filter(({ task }) => task.car === car).map(({ work }) => work.finish));
}

function endOfHours({ people }: Service, { work }: Done): number {
  const ends = work.people.map(({ person }) => {
    const hours = people.find(({ id }) => id === person)?.hours ?? [];
    return hours.find(({ from, until }) => from <= work.start && work.finish <= until)?.until ?? work.finish;
  });
  return Math.min(Number.POSITIVE_INFINITY, ...ends);
}

/** With what it waits for as planned, its longest lags. */
function latestByLags({ after = [] }: ServiceTask, done: readonly Done[]): number {
  const ends = after.map(({ task, maxLag }) => {
    const before = done.find((one) => one.task.id === task);
    return before && maxLag !== undefined ? before.work.finish + maxLag : Number.POSITIVE_INFINITY;
  });
  return Math.min(Number.POSITIVE_INFINITY, ...ends);
}
