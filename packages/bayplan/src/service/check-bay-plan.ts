import type { BayPlan, Objective, PlannedWork } from './bay-plan';
import { LEVELS } from './bay-plan';
import { findAssignmentFaults } from './check-people';
import { findSharingFaults } from './check-sharing';
import { plannedDuration } from './planned-duration';
import type { Service, ServiceCar, ServiceTask } from './service-model';

export interface BayPlanFault {
  kind:
    | 'unknown'
    | 'missing'
    | 'twice'
    | 'mustBeDone'
    | 'mustNotBeDone'
    | 'notWhole'
    | 'duration'
    | 'tooEarly'
    | 'tooLate'
    | 'pin'
    | 'crew'
    | 'hours'
    | 'personTwice'
    | 'tools'
    | 'room'
    | 'access'
    | 'fuelOpen'
    | 'objective';
  sentence: string;
}

/** A task of the plan with all that belongs to it. */
export interface DoneTask {
  task: ServiceTask;
  work: PlannedWork;
}

/**
 * Everything that is wrong with a plan, judged from the service's own data alone: nothing that makes plans is used here,
 * so that a fault there can't hide itself. An empty list means that the plan keeps every rule and its objective is right.
 *
 * @example
 * checkBayPlan(service, plan)
 * // [{ kind: 'personTwice', sentence: 'Ada does pads from 4 to 9 and wheels from 8 to 10.' }]
 */
export function checkBayPlan(service: Service, plan: BayPlan): BayPlanFault[] {
  const unlisted = findListFaults(service, plan);
  if (unlisted.length > 0) return unlisted;
  const done = new Map<string, DoneTask>();
  for (const task of service.tasks) {
    const work = plan.work.find((one) => one.task === task.id);
    if (work) done.set(task.id, { task, work });
  }
  return [
    ...service.tasks.flatMap((task) => findPresenceFaults(service, task, done)),
    ...[...done.values()].flatMap((one) => [
      ...findTimeFaults(service, one),
      ...findPinFaults(one),
      ...findLinkFaults(one, done),
    ]),
    ...findAssignmentFaults(service, [...done.values()]),
    ...findSharingFaults(service, [...done.values()]),
    ...findObjectiveFaults(service, done, plan.objective),
  ];
}

function findListFaults({ tasks }: Service, { work, left }: BayPlan): BayPlanFault[] {
  const named = [...work.map(({ task }) => task), ...left];
  const known = new Set(tasks.map(({ id }) => id));
  const faults: BayPlanFault[] = named
    .filter((id) => !known.has(id))
    .map((id) => ({ kind: 'unknown', sentence: `${id} is not a task of this service.` }));
  for (const { id } of tasks) {
    const times = named.filter((one) => one === id).length;
    if (times === 0) faults.push({ kind: 'missing', sentence: `${id} is neither done nor left.` });
    if (times > 1) faults.push({ kind: 'twice', sentence: `${id} is in the plan ${times} times.` });
  }
  return faults;
}

function findPresenceFaults(
  service: Service,
  task: ServiceTask,
  done: ReadonlyMap<string, DoneTask>,
): BayPlanFault[] {
  const faults: BayPlanFault[] = [];
  const isDone = done.has(task.id);
  const must = (why: string) =>
    faults.push({ kind: 'mustBeDone', sentence: `${task.id} is left, but ${why}.` });
  const mustNot = (why: string) =>
    faults.push({ kind: 'mustNotBeDone', sentence: `${task.id} is done, but ${why}.` });
  if (!isDone && task.mandatory) must('must be done');
  if (!isDone && task.underWay) must('is under way');
  if (!isDone && task.pin?.done === true) must('is pinned to be done');
  if (isDone && task.pin?.done === false) mustNot('is pinned to be left');
  for (const { task: other, together } of task.after ?? []) {
    if (together && !isDone && done.has(other)) must(`goes together with ${other}`);
    if (together && isDone && !done.has(other)) mustNot(`goes together with ${other}, which is left`);
  }
  for (const access of service.accesses) {
    if (access.opening !== task.id && access.closing !== task.id) continue;
    const openAlready = access.closing === task.id && access.opening === undefined;
    const begun = service.tasks.some(
      ({ id, underWay }) => underWay && (id === access.opening || id === access.closing),
    );
    const needed = [...done.values()].some((one) => one.task.open?.includes(access.id));
    const used = openAlready || begun || needed;
    if (used && !isDone) must(`${access.id} is used`);
    if (!used && isDone) mustNot(`nothing needs ${access.id}`);
  }
  return faults;
}

function findTimeFaults(service: Service, { task, work }: DoneTask): BayPlanFault[] {
  const { id, start, finish } = { id: task.id, start: work.start, finish: work.finish };
  if (!Number.isSafeInteger(start) || !Number.isSafeInteger(finish)) {
    return [
      { kind: 'notWhole', sentence: `${id} runs from ${start} to ${finish}; both must be whole numbers.` },
    ];
  }
  const car = service.cars.find((one) => one.id === task.car);
  const faults: BayPlanFault[] = [];
  const latest = car?.latest ?? car?.outTime ?? Number.NaN;
  if (!(finish <= latest)) {
    faults.push({ kind: 'tooLate', sentence: `${id} is finished at ${finish}, after ${latest}.` });
  }
  if (task.underWay) return faults;
  const way = task.ways.find((one) => one.id === work.way);
  if (!way) return [...faults, { kind: 'unknown', sentence: `${id} has no way ${work.way}.` }];
  const duration = plannedDuration(way.duration, service.certainty);
  if (finish - start !== duration) {
    const sentence = `${id} runs from ${start} to ${finish}, but ${way.id} takes ${duration}.`;
    faults.push({ kind: 'duration', sentence });
  }
  const earliest = earliestOf(task, car);
  if (!(start >= earliest)) {
    faults.push({ kind: 'tooEarly', sentence: `${id} starts at ${start}, before ${earliest}.` });
  }
  return faults;
}

function earliestOf({ notBefore, cold }: ServiceTask, car: ServiceCar | undefined): number {
  if (!car) return Number.NaN;
  const hot = cold ? (car.hotUntil ?? car.inTime) : car.inTime;
  return Math.max(car.inTime, notBefore ?? car.inTime, hot);
}

function findPinFaults({ task, work }: DoneTask): BayPlanFault[] {
  const { pin, underWay } = task;
  const people = new Set(work.people.map(({ person }) => person));
  const faults: BayPlanFault[] = [];
  const say = (what: string) => faults.push({ kind: 'pin', sentence: `${task.id} is ${what}.` });
  if (underWay) {
    const { since, until, way } = underWay;
    const same = underWay.people.length === people.size && underWay.people.every((one) => people.has(one));
    if (work.start !== since || work.finish !== until) say(`under way from ${since} to ${until}`);
    if (work.way !== way || !same) say(`under way as ${way} by ${underWay.people.join(', ')}`);
    return faults;
  }
  if (pin?.start !== undefined && pin.start !== work.start) say(`pinned to start at ${pin.start}`);
  if (pin?.way !== undefined && pin.way !== work.way) say(`pinned to be done as ${pin.way}`);
  for (const one of pin?.people ?? []) if (!people.has(one)) say(`pinned to be done by ${one}`);
  return faults;
}

function findLinkFaults({ task, work }: DoneTask, done: ReadonlyMap<string, DoneTask>): BayPlanFault[] {
  const faults: BayPlanFault[] = [];
  for (const { task: other, lag = 0, maxLag } of task.after ?? []) {
    const before = done.get(other);
    if (!before) continue;
    const wait = work.start - before.work.finish;
    if (wait < lag) {
      const sentence = `${task.id} starts at ${work.start}, but not before ${before.work.finish + lag}, after ${other}.`;
      faults.push({ kind: 'tooEarly', sentence });
    }
    if (maxLag !== undefined && wait > maxLag) {
      const sentence = `${task.id} starts at ${work.start}, but by ${before.work.finish + maxLag}, after ${other}.`;
      faults.push({ kind: 'tooLate', sentence });
    }
  }
  return faults;
}

function findObjectiveFaults(
  service: Service,
  done: ReadonlyMap<string, DoneTask>,
  stated: Objective,
): BayPlanFault[] {
  const counted: Objective = { late: 0, value: 0, finish: 0, handOvers: 0 };
  for (const { id, inTime, outTime } of service.cars) {
    const finishes = [...done.values()].filter(({ task }) => task.car === id).map(({ work }) => work.finish);
    const finish = Math.max(inTime, ...finishes);
    counted.finish += finish;
    counted.late += Math.max(0, finish - outTime);
  }
  for (const { task, work } of done.values()) {
    counted.value += task.ways.find(({ id }) => id === work.way)?.value ?? 0;
    const people = new Set(work.people.map(({ person }) => person));
    for (const { task: other } of task.after ?? []) {
      const before = done.get(other)?.work.people;
      if (!before || before.length === 0 || people.size === 0) continue;
      if (!before.some(({ person }) => people.has(person))) counted.handOvers += 1;
    }
  }
  return LEVELS.filter((level) => counted[level] !== stated[level]).map((level) => ({
    kind: 'objective',
    sentence: `The plan says ${level} is ${stated[level]}, but it is ${counted[level]}.`,
  }));
}
