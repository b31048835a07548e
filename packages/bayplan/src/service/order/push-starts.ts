import { at } from '../../at';
import type { BayPlan, PlannedWork } from '../bay-plan';
import type { Service, ServiceCar, ServiceTask, Stretch } from '../service-model';
import { type Done, lagBetween, listDone } from './plan-order';

/** A plan's order: its work by start, and for each what must be finished before. */
export interface WorkOrder {
  work: readonly OrderedWork[];
}

export interface OrderedWork extends Done {
  /** It doesn't start before, whatever else is done. */
  earliest: number;
  /** It starts then: it is under way. */
  since?: number;
  /** Places in the order, and how long after each it starts at least. */
  before: readonly number[];
  lags: readonly number[];
  hours: readonly (readonly Stretch[])[];
}

export interface OrderRules {
  plannedStart: (work: PlannedWork) => number;
  /** Whether the second, which starts no earlier, waits for the first if they have anything to do with each other. */
  follows: (one: PlannedWork, other: PlannedWork) => boolean;
}

const isOver: OrderRules['follows'] = (one, other) => one.finish <= other.start;

/**
 * The order and the seats of a plan, apart from its times. Work starts as soon as its order allows, except that what
 * something must follow before long isn't started before its planned time, lest it should wait.
 *
 * @param plan one that {@link checkBayPlan} finds nothing wrong with
 * @param rules where the plan's own times stand for an order only
 */
export function orderOf(
  service: Service,
  plan: BayPlan,
  { plannedStart, follows }: OrderRules = { plannedStart: ({ start }) => start, follows: isOver },
): WorkOrder {
  const done = listDone(service, plan).toSorted((one, other) => one.work.start - other.work.start);
  const followed = new Set(
    done.flatMap(({ task }) =>
      (task.after ?? []).filter(({ maxLag }) => maxLag !== undefined).map((link) => link.task),
    ),
  );
  const work = done.map((one, place) => {
    const ties = done.slice(0, place).flatMap((before, number) => {
      if (!follows(before.work, one.work)) return [];
      const lag = lagBetween(service, before, one);
      return lag === undefined ? [] : [{ number, lag }];
    });
    const { task } = one;
    const earliest = earliestOf(service, task);
    return {
      ...one,
      earliest: followed.has(task.id) ? Math.max(earliest, plannedStart(one.work)) : earliest,
      ...(task.underWay ? { since: task.underWay.since } : {}),
      before: ties.map(({ number }) => number),
      lags: ties.map(({ lag }) => lag),
      hours: task.underWay ? [] : hoursOf(service, one),
    };
  });
  return { work };
}

/**
 * When everything starts if it takes so long, in the order of the work. Nobody starts outside their hours, but who has
 * started stays until it is done; after the last of their hours they are taken to have stayed on.
 */
export function pushStarts({ work }: WorkOrder, durations: Float64Array, starts: Float64Array): void {
  for (let place = 0; place < work.length; place += 1) {
    const one = work[place];
    if (!one) return;
    let start = one.earliest;
    for (let tie = 0; tie < one.before.length; tie += 1) {
      const before = one.before[tie] ?? 0;
      start = Math.max(start, at(starts, before) + at(durations, before) + (one.lags[tie] ?? 0));
    }
    starts[place] = one.since ?? whenAllAreThere(one.hours, start);
  }
}

/** The first moment from `start` on at which everyone is there; after the last of their hours they are taken to have stayed on. */
export function whenAllAreThere(hours: OrderedWork['hours'], start: number): number {
  let moment = start;
  for (let moved = true; moved; ) {
    moved = false;
    for (const stretches of hours) {
      const next = whenThere(stretches, moment);
      if (next > moment) moved = true;
      moment = next;
    }
  }
  return moment;
}

function whenThere(stretches: readonly Stretch[], moment: number): number {
  let next = Number.POSITIVE_INFINITY;
  for (const { from, until } of stretches) {
    if (until > moment) next = Math.min(next, Math.max(from, moment));
  }
  return Number.isFinite(next) ? next : moment;
}

function hoursOf({ people }: Service, { work }: Done): (readonly Stretch[])[] {
  return work.people.map(({ person }) => people.find(({ id }) => id === person)?.hours ?? []);
}

function earliestOf({ cars }: Service, task: ServiceTask): number {
  const { inTime, hotUntil }: Pick<ServiceCar, 'inTime' | 'hotUntil'> = cars.find(
    ({ id }) => id === task.car,
  ) ?? { inTime: 0 };
  const cold = task.cold ? (hotUntil ?? inTime) : inTime;
  return Math.max(inTime, task.notBefore ?? inTime, cold, task.pin?.start ?? inTime);
}
