import { findServiceFault } from './find-service-fault';
import { plannedDuration } from './planned-duration';
import type { Access, Crew, Service, ServiceCar, ServicePerson, ServiceTask, Way } from './service-model';

/** A service with numbers for names and all that follows for a task alone worked out. */
export interface CompiledService {
  service: Service;
  tasks: readonly CompiledTask[];
  links: readonly CompiledLink[];
  cars: readonly ServiceCar[];
  /** No plan has anything before or after these. */
  earliest: number;
  latest: number;
}

export interface CompiledTask {
  id: string;
  number: number;
  car: number;
  ways: readonly CompiledWay[];
  /** Settled before anything else is known. When both are true there is no plan. */
  must: boolean;
  mustNot: boolean;
  /** Of its start, and of its finish. */
  earliest: number;
  latest: number;
  /** Its start if that is settled. */
  start?: number;
  people: readonly number[];
  fuelOpen: boolean;
  /** Nothing is asked of its people's hours or skills: they are doing it. */
  underWay: boolean;
}

export interface CompiledWay {
  id: string;
  duration: number;
  value: number;
  /** How many people it takes altogether. */
  heads: number;
  crew: readonly CompiledCrew[];
  /** Seat by seat, crew by crew, and person by person: 1 for who can sit there. */
  seats: readonly Uint8Array[];
  place?: number;
  /** Tool by tool how many of it. */
  tools: readonly number[];
}

export interface CompiledCrew {
  skill?: string;
  count: number;
  /** The people who can do it. */
  candidates: readonly number[];
}

export interface CompiledLink {
  before: number;
  after: number;
  lag: number;
  maxLag: number | undefined;
  together: boolean;
}

/**
 * @throws RangeError with the sentence of {@link findServiceFault}
 */
export function compileService(service: Service): CompiledService {
  const fault = findServiceFault(service);
  if (fault) throw new RangeError(`compileService: ${fault.sentence}`);
  const numbers = new Map(service.tasks.map(({ id }, number) => [id, number]));
  const tasks = service.tasks.map((task, number) => compileTask(service, task, number));
  return {
    service,
    tasks,
    links: service.tasks.flatMap(({ after = [] }, number) =>
      after.map(({ task, lag = 0, maxLag, together = false }) => ({
        before: numbers.get(task) ?? -1,
        after: number,
        lag,
        maxLag,
        together,
      })),
    ),
    cars: service.cars,
    earliest: Math.min(
      0,
      ...tasks.map(({ earliest }) => earliest),
      ...service.cars.map(({ inTime }) => inTime),
    ),
    latest: Math.max(0, ...tasks.map(({ latest }) => latest)),
  };
}

function compileTask(service: Service, task: ServiceTask, number: number): CompiledTask {
  const car = service.cars.findIndex(({ id }) => id === task.car);
  const { inTime = 0, outTime = 0, latest = outTime, hotUntil = inTime } = service.cars[car] ?? {};
  const { underWay, pin, notBefore = inTime } = task;
  const shared = { id: task.id, number, car, latest, fuelOpen: task.fuelOpen === true };
  if (underWay) return { ...shared, ...compileUnderWay(service, task, underWay) };
  const allowed = pin?.way === undefined ? task.ways : task.ways.filter(({ id }) => id === pin.way);
  return {
    ...shared,
    ways: allowed.map((way) => compileWay(service, way)),
    must: mustBeDone(service, task),
    mustNot: pin?.done === false,
    earliest: Math.max(inTime, notBefore, task.cold ? hotUntil : inTime),
    ...(pin?.start === undefined ? {} : { start: pin.start }),
    people: (pin?.people ?? []).map((id) => personNumber(service, id)),
    underWay: false,
  };
}

function mustBeDone({ accesses, tasks }: Service, { id, mandatory, pin }: ServiceTask): boolean {
  const ends = accesses.filter(({ opening, closing }) => opening === id || closing === id);
  const settled = ends.some((access) => access.opening === undefined || isBegun(access, tasks));
  return settled || mandatory === true || pin?.done === true;
}

/** Whether it is being opened or closed, so that both are done whatever else is. */
export function isBegun({ opening, closing }: Access, tasks: Service['tasks']): boolean {
  return tasks.some(({ id, underWay }) => underWay !== undefined && (id === opening || id === closing));
}

function compileUnderWay(
  service: Service,
  task: ServiceTask,
  underWay: NonNullable<ServiceTask['underWay']>,
) {
  const people = underWay.people.map((id) => personNumber(service, id));
  const ways = task.ways
    .filter(({ id }) => id === underWay.way)
    .map((way) => {
      const crew = people.map((person) => ({ count: 1, candidates: [person] }));
      const duration = underWay.until - underWay.since;
      const seats = seatsOf(crew, service.people.length);
      return { ...compileWay(service, way), duration, heads: people.length, crew, seats };
    });
  const { since } = underWay;
  return { ways, must: true, mustNot: false, earliest: since, start: since, people, underWay: true };
}

function compileWay(service: Service, way: Way): CompiledWay {
  const { duration, crew, place, tools = [], value = 0 } = way;
  const wanted = mergeCrew(crew).map((one) => ({
    ...one,
    candidates: candidatesFor(service.people, one.skill),
  }));
  return {
    id: way.id,
    duration: plannedDuration(duration, service.certainty),
    value,
    heads: wanted.reduce((sum, { count }) => sum + count, 0),
    crew: wanted,
    seats: seatsOf(wanted, service.people.length),
    ...(place === undefined ? {} : { place: service.places.findIndex(({ id }) => id === place) }),
    tools: service.tools.map(({ id }) => tools.filter((tool) => tool === id).length),
  };
}

function seatsOf(crew: readonly CompiledCrew[], people: number): Uint8Array[] {
  return crew.flatMap(({ count, candidates }) => {
    const able = new Uint8Array(people);
    for (const person of candidates) able[person] = 1;
    return Array.from({ length: count }, () => able);
  });
}

/** One crew a skill; the scarcer first is the caller's business. */
function mergeCrew(crew: readonly Crew[]): Crew[] {
  const counts = new Map<string | undefined, number>();
  for (const { skill, count } of crew) counts.set(skill, (counts.get(skill) ?? 0) + count);
  return [...counts]
    .filter(([, count]) => count > 0)
    .map(([skill, count]) => (skill === undefined ? { count } : { skill, count }));
}

function candidatesFor(people: readonly ServicePerson[], skill: string | undefined): number[] {
  return [...people.keys()].filter((number) => skill === undefined || people[number]?.skills.includes(skill));
}

function personNumber({ people }: Service, id: string): number {
  return people.findIndex((person) => person.id === id);
}
