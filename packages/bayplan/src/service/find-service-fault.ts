import { plannedDuration } from './planned-duration';
import type { Access, Service, ServiceTask, Way } from './service-model';

export interface ServiceFault {
  kind: 'repeatedId' | 'unknown' | 'notWhole' | 'contradiction';
  /** The task, person, car … it is about. */
  id: string;
  sentence: string;
}

/**
 * What makes the description of a service meaningless, or nothing. That a meaningful service may have no plan is another
 * matter: see `whyInfeasible`.
 *
 * @example
 * findServiceFault(service) // { kind: 'unknown', id: 'pads', sentence: 'pads needs jack, which is not a tool.' }
 */
export function findServiceFault(service: Service): ServiceFault | undefined {
  return (
    findRepeatedId(service) ??
    findBrokenNumber(service) ??
    findFirst(service.accesses, (access) => findAccessFault(service, access)) ??
    findFirst(service.tasks, (task) => findTaskFault(service, task)) ??
    findFirst(service.people, ({ id }) => findTwiceUnderWay(service, id))
  );
}

function findFirst<Thing>(
  things: readonly Thing[],
  faultOf: (thing: Thing) => ServiceFault | undefined,
): ServiceFault | undefined {
  for (const thing of things) {
    const fault = faultOf(thing);
    if (fault) return fault;
  }
  return undefined;
}

function findRepeatedId(service: Service): ServiceFault | undefined {
  const { cars, people, places, tools, accesses, tasks } = service;
  const ways = tasks.map((task) => task.ways);
  const links = tasks.map(({ after = [] }) => after.map(({ task }) => ({ id: task })));
  for (const things of [cars, people, places, tools, accesses, tasks, ...ways, ...links]) {
    const seen = new Set<string>();
    for (const { id } of things) {
      if (seen.has(id)) return { kind: 'repeatedId', id, sentence: `${id} is there twice.` };
      seen.add(id);
    }
  }
  return undefined;
}

function findBrokenNumber({ cars, people, places, tools }: Service): ServiceFault | undefined {
  return (
    findFirst(cars, ({ id, inTime, outTime, latest = outTime, hotUntil = inTime }) =>
      refuseFractions(id, { inTime, outTime, latest, hotUntil }, Number.MIN_SAFE_INTEGER),
    ) ??
    findFirst(cars, ({ id, inTime, outTime, latest = outTime }) =>
      inTime <= outTime && outTime <= latest
        ? undefined
        : contradict(
            id,
            `${id} comes in at ${inTime}, is due out at ${outTime} and must leave by ${latest}.`,
          ),
    ) ??
    findFirst(people, ({ id, hours }) =>
      findFirst(hours, ({ from, until }) => refuseFractions(id, { from, until }, Number.MIN_SAFE_INTEGER)),
    ) ??
    findFirst(places, ({ id, room }) => refuseFractions(id, { room })) ??
    findFirst(tools, ({ id, count }) => refuseFractions(id, { count }))
  );
}

function findAccessFault({ cars, tasks }: Service, access: Access): ServiceFault | undefined {
  const { id, car, opening, closing } = access;
  if (!cars.some((one) => one.id === car)) return unknown(id, car, 'a car');
  for (const end of [opening, closing]) {
    if (end === undefined) continue;
    const task = tasks.find((one) => one.id === end);
    if (!task) return unknown(id, end, 'a task');
    if (task.car !== car) return contradict(id, `${end} is not work at ${car}, as ${id} is.`);
    if (task.mandatory) return contradict(end, `${end} is done because of ${id}; it can't be mandatory.`);
    if (task.open?.includes(id) || task.closed?.includes(id)) {
      return contradict(end, `${end} opens or closes ${id}, so it can't need it open or closed.`);
    }
  }
  if (opening !== undefined && opening === closing)
    return contradict(id, `${opening} can't open and close ${id}.`);
  return undefined;
}

function findTaskFault(service: Service, task: ServiceTask): ServiceFault | undefined {
  const { id, car, ways, after = [], pin, underWay, notBefore = 0 } = task;
  if (!service.cars.some((one) => one.id === car)) return unknown(id, car, 'a car');
  if (ways.length === 0) return contradict(id, `${id} has no way of doing it.`);
  return (
    refuseFractions(id, { notBefore, 'pinned start': pin?.start ?? 0 }, Number.MIN_SAFE_INTEGER) ??
    findFirst(ways, (way) => findWayFault(service, task, way)) ??
    findFirst(after, ({ task: other, lag = 0, maxLag = lag }) => {
      if (other === id) return contradict(id, `${id} can't wait for itself.`);
      if (!service.tasks.some((one) => one.id === other)) return unknown(id, other, 'a task');
      if (maxLag < lag)
        return contradict(id, `${id} must wait ${lag} after ${other}, but at most ${maxLag}.`);
      return refuseFractions(id, { [`lag after ${other}`]: lag, [`longest lag after ${other}`]: maxLag });
    }) ??
    findFirst([...(task.open ?? []), ...(task.closed ?? [])], (access) => {
      const known = service.accesses.find((one) => one.id === access);
      if (!known) return unknown(id, access, 'an access');
      return known.car === car ? undefined : contradict(id, `${id} needs ${access} of another car.`);
    }) ??
    findFirst([...(pin?.people ?? []), ...(underWay?.people ?? [])], (person) =>
      service.people.some((one) => one.id === person) ? undefined : unknown(id, person, 'a person'),
    ) ??
    findFirst([pin?.way ?? ways[0]?.id, underWay?.way ?? ways[0]?.id], (way) =>
      ways.some((one) => one.id === way) ? undefined : unknown(id, `${way}`, 'one of its ways'),
    ) ??
    findUnderWayFault(task)
  );
}

function findWayFault(service: Service, { id }: ServiceTask, way: Way): ServiceFault | undefined {
  const { duration, crew, place, tools = [], value = 0 } = way;
  if (place !== undefined && !service.places.some((one) => one.id === place))
    return unknown(id, place, 'a place');
  const tool = tools.find((one) => !service.tools.some((known) => known.id === one));
  if (tool !== undefined) return unknown(id, tool, 'a tool');
  const { low, likely, high } = duration;
  if (!(0 <= low && low <= likely && likely <= high && Number.isFinite(high))) {
    return contradict(
      id,
      `${id} takes ${low}, ${likely} or ${high}: these must be from 0 and never get smaller.`,
    );
  }
  const { certainty } = service;
  if (certainty !== undefined && !(certainty > 0 && certainty < 1)) {
    return contradict(id, `The certainty ${certainty} must be above 0 and below 1.`);
  }
  return (
    refuseFractions(id, { 'planned duration': plannedDuration(duration, certainty) }, 1) ??
    refuseFractions(id, { value }) ??
    findFirst(crew, ({ count }) => refuseFractions(id, { crew: count }))
  );
}

function findUnderWayFault({ id, underWay, pin }: ServiceTask): ServiceFault | undefined {
  if (!underWay) return undefined;
  if (pin) return contradict(id, `${id} is under way, so nothing of it can be pinned.`);
  if (new Set(underWay.people).size < underWay.people.length)
    return contradict(id, `${id} has somebody twice.`);
  if (underWay.until <= underWay.since)
    return contradict(id, `${id} is under way, but ends before it began.`);
  return refuseFractions(id, { since: underWay.since, until: underWay.until }, Number.MIN_SAFE_INTEGER);
}

/** No plan could have that, and no reason would explain it. */
function findTwiceUnderWay({ tasks }: Service, person: string): ServiceFault | undefined {
  const own = tasks.filter(({ underWay }) => underWay?.people.includes(person));
  return findFirst(own, ({ id, underWay }) => {
    if (!underWay) return undefined;
    const { since, until } = underWay;
    const other = own.find(
      (one) => one.id !== id && one.underWay && since < one.underWay.until && one.underWay.since < until,
    );
    return other && contradict(person, `${person} can't be doing ${id} and ${other.id} at a time.`);
  });
}

function refuseFractions(
  id: string,
  numbers: Readonly<Record<string, number>>,
  least = 0,
): ServiceFault | undefined {
  for (const [what, value] of Object.entries(numbers)) {
    if (Number.isSafeInteger(value) && value >= least) continue;
    const from = least === Number.MIN_SAFE_INTEGER ? '' : ` from ${least}`;
    return {
      kind: 'notWhole',
      id,
      sentence: `The ${what} of ${id} is ${value}; it must be a whole number${from}.`,
    };
  }
  return undefined;
}

function unknown(id: string, named: string, what: string): ServiceFault {
  return { kind: 'unknown', id, sentence: `${id} names ${named}, which is not ${what}.` };
}

function contradict(id: string, sentence: string): ServiceFault {
  return { kind: 'contradiction', id, sentence };
}
