import type { Service, ServicePerson, ServiceTask } from '../service-model';
import type { Reason } from './reason';

/** What the cars, people, places and tools of a service restrict. */
export function listTeamReasons(service: Service): Reason[] {
  const skills = new Set(
    service.tasks.flatMap(({ ways }) => ways.flatMap(({ crew }) => crew.flatMap(({ skill }) => skill ?? []))),
  );
  return [
    ...service.tools.map(({ id, count }): Reason => {
      const sentence = `There is only ${count} of ${id}.`;
      return {
        kind: 'tool',
        id,
        sentence,
        drop: (one) => ({ ...one, tools: widen(one.tools, id, { count: PLENTY }) }),
      };
    }),
    ...service.places.map(({ id, room }): Reason => {
      const sentence = `${id} has room for ${room} at a time.`;
      return {
        kind: 'room',
        id,
        sentence,
        drop: (one) => ({ ...one, places: widen(one.places, id, { room: PLENTY }) }),
      };
    }),
    ...service.people.map(hoursReason),
    ...[...skills].map((skill) => skillReason(service.people, skill)),
    peopleReason(service.people.length),
    ...service.cars.map(({ id, outTime, latest = outTime }): Reason => {
      const sentence = `${id} must be finished by ${latest}.`;
      const far = latest + spanOf(service);
      return {
        kind: 'latest',
        id,
        sentence,
        drop: (one) => ({ ...one, cars: widen(one.cars, id, { latest: far }) }),
      };
    }),
  ];
}

const PLENTY = 10_000;
const ALWAYS = 1_000_000;

/** Time enough for everything one after the other, with all its waiting. */
function spanOf({ tasks, cars }: Service): number {
  const work = tasks.map(({ ways, after = [], underWay, pin, notBefore }) => {
    const longest = Math.max(...ways.map(({ duration }) => Math.ceil(duration.high)));
    const lags = after.reduce((sum, { lag = 0 }) => sum + lag, 0);
    const fixed = [underWay?.until, pin?.start, notBefore].map((time) => Math.abs(time ?? 0));
    return longest + lags + Math.max(...fixed);
  });
  const hot = cars.map(({ inTime, hotUntil = inTime }) => Math.abs(inTime) + Math.abs(hotUntil));
  return [...work, ...hot].reduce((sum, time) => sum + time, 0);
}

function widen<Thing extends { id: string }>(
  things: readonly Thing[],
  id: string,
  more: Partial<Thing>,
): Thing[] {
  return things.map((thing) => (thing.id === id ? { ...thing, ...more } : thing));
}

function hoursReason({ id, hours }: ServicePerson): Reason {
  const stretches = hours.map(({ from, until }) => `from ${from} to ${until}`).join(' and ');
  const always = [{ from: -ALWAYS, until: ALWAYS }];
  return {
    kind: 'hours',
    id,
    sentence: hours.length === 0 ? `${id} is never there.` : `${id} is there only ${stretches}.`,
    drop: (service) => ({ ...service, people: widen(service.people, id, { hours: always }) }),
  };
}

function skillReason(people: readonly ServicePerson[], skill: string): Reason {
  const able = people.filter(({ skills }) => skills.includes(skill)).map(({ id }) => id);
  return {
    kind: 'skill',
    id: skill,
    sentence: able.length === 0 ? `Nobody can do ${skill}.` : `Only ${able.join(', ')} can do ${skill}.`,
    drop: (service) =>
      withCrews(service, (crew) => crew.map((one) => (one.skill === skill ? { count: one.count } : one))),
  };
}

/** Work that anyone can do then does itself; so does skilled work once its skill is dropped too, so this must come last. */
function peopleReason(count: number): Reason {
  return {
    kind: 'people',
    id: 'people',
    sentence: count === 1 ? 'There is only 1 person.' : `There are only ${count} people.`,
    drop: (service) =>
      withoutPinnedPeople(withCrews(service, (crew) => crew.filter(({ skill }) => skill !== undefined))),
  };
}

function withCrews(
  service: Service,
  change: (crew: ServiceTask['ways'][number]['crew']) => ServiceTask['ways'][number]['crew'],
): Service {
  const tasks = service.tasks.map((task) => ({
    ...task,
    ways: task.ways.map((way) => ({ ...way, crew: change(way.crew) })),
  }));
  return { ...service, tasks };
}

function withoutPinnedPeople(service: Service): Service {
  const tasks = service.tasks.map(({ pin, ...task }) => {
    if (!pin) return task;
    const { people: _, ...rest } = pin;
    return { ...task, pin: rest };
  });
  return { ...service, tasks };
}
