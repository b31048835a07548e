import { plannedDuration } from '../planned-duration';
import type { Access, Service, ServiceLink, ServiceTask, UnderWay } from '../service-model';
import { expectDuration } from './expect-duration';
import type { DoneProgress, Progress, UnderWayProgress } from './progress';

type Log = ReadonlyMap<string, Progress>;

/**
 * The same service as it is now. What is done keeps its times and holds nobody and nothing any more; what is under way
 * stays with who is on it and ends when it presumably does; everything else starts from now on. What was begun isn't asked
 * again whether it might be: logs are entered late and out of order. An access that is used counts as opened.
 */
export function serviceFromNow(service: Service, now: number, progress: readonly Progress[]): Service {
  const logged = new Map(progress.map((one) => [one.task, one]));
  const opened = new Map(
    service.accesses.map((access) => [access.id, openedBy(service, access, { now, logged })]),
  );
  const tasks = service.tasks.map((task): ServiceTask => {
    const one = logged.get(task.id);
    const opens = service.accesses.find(({ opening }) => opening === task.id);
    const until = opens && opened.get(opens.id);
    const after = linksLeft(service, task, logged);
    if (until !== undefined) return { ...asDone(task, { since: until - 1, until, way: one?.way }), after };
    if (!one) return fromNowOn(service, task, { now, logged });
    return one.state === 'done'
      ? { ...asDone(task, pastOf(one, now)), after }
      : { ...asUnderWay(service, task, { one, now, logged }), after };
  });
  return { ...service, tasks };
}

/** When an access is open at the latest, if its opening is over: what needs it has begun, or it is itself done. */
function openedBy(
  { tasks }: Service,
  { id, opening, closing }: Access,
  { now, logged }: { now: number; logged: Log },
): number | undefined {
  if (opening === undefined) return undefined;
  const timesOf = (one: Progress | undefined) => (one?.state === 'done' ? pastOf(one, now) : one);
  const begun = tasks
    .filter((task) => task.open?.includes(id) || task.id === closing)
    .flatMap((task) => timesOf(logged.get(task.id))?.since ?? []);
  const own = logged.get(opening);
  const ends = own?.state === 'done' ? [...begun, pastOf(own, now).until] : begun;
  return ends.length === 0 ? undefined : Math.min(...ends);
}

function pastOf({ since, until, way }: DoneProgress, now: number) {
  const end = Math.min(until, now);
  return { since: Math.min(since, end - 1), until: end, way };
}

function asDone(
  task: ServiceTask,
  { since, until, way = task.ways[0]?.id }: { since: number; until: number; way: string | undefined },
): ServiceTask {
  const taken = task.ways.find(({ id }) => id === way) ?? task.ways[0];
  if (!taken) return task;
  const { id, value = 0 } = taken;
  return {
    id: task.id,
    car: task.car,
    ways: [{ id, value, crew: [], duration: { low: 1, likely: 1, high: 1 } }],
    underWay: { since, until, way: id, people: [] },
  };
}

function asUnderWay(
  service: Service,
  { pin: _, ...task }: ServiceTask,
  { one, now, logged }: { one: UnderWayProgress; now: number; logged: Log },
): ServiceTask {
  const isLogged = (end: string | undefined) => end !== undefined && logged.has(end);
  const accessOf = (id: string) => service.accesses.find((access) => access.id === id);
  return {
    ...task,
    open: (task.open ?? []).filter((id) => !isLogged(accessOf(id)?.closing)),
    closed: (task.closed ?? []).filter((id) => !isLogged(accessOf(id)?.opening)),
    underWay: underWayOf(service, task, one, now),
  };
}

function underWayOf(
  { certainty }: Service,
  { ways }: ServiceTask,
  { since, way, people }: UnderWayProgress,
  now: number,
): UnderWay {
  const duration = ways.find(({ id }) => id === way)?.duration ?? { low: 1, likely: 1, high: 1 };
  const planned = plannedDuration(duration, certainty);
  const expected = Math.ceil(expectDuration(duration, now - since) - ROUNDING);
  return { since, until: Math.max(since + planned, since + expected, now + 1), way, people };
}

const ROUNDING = 1e-9;

function fromNowOn(
  service: Service,
  task: ServiceTask,
  { now, logged }: { now: number; logged: Log },
): ServiceTask {
  const { pin, ...rest } = task;
  const waiting = { ...rest, notBefore: Math.max(task.notBefore ?? now, now) };
  const { start, ...others } = pin ?? {};
  const wanted = start === undefined || start < now ? others : { ...others, start };
  const settled = isOwed(service, task, logged) && pin?.done !== false ? { ...wanted, done: true } : wanted;
  return Object.keys(settled).length === 0 ? waiting : { ...waiting, pin: settled };
}

/** Something that is never done without it has begun before it. */
function isOwed({ tasks }: Service, { id }: ServiceTask, logged: Log): boolean {
  return tasks.some(
    (other) => logged.has(other.id) && other.after?.some(({ task, together }) => task === id && together),
  );
}

/**
 * What a task that has begun still waits for: an optional task that has not, so that it is left rather than done too late.
 * What must be done has to be done after all, in the wrong order.
 */
function linksLeft(service: Service, { after = [] }: ServiceTask, logged: Log): readonly ServiceLink[] {
  return after.filter(({ task: id, together }) => {
    const task = service.tasks.find((one) => one.id === id);
    const isEnd = service.accesses.some(({ opening, closing }) => opening === id || closing === id);
    return !together && !isEnd && !logged.has(id) && task?.mandatory !== true && task?.pin?.done !== true;
  });
}
