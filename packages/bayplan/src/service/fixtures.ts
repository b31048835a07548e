import fc from 'fast-check';
import type { Access, Service, ServiceCar, ServiceTask, Way } from './service-model';

/** Small enough that an integer program over every moment can be solved: a dozen moments, up to seven tasks. */
export function anyService({ most = 5 }: { most?: number } = {}): fc.Arbitrary<Service> {
  return fc
    .tuple(fc.integer({ min: 1, max: 2 }), fc.constantFrom(1, 2, 2, 3, 3), fc.integer({ min: 2, max: most }))
    .chain(([cars, people, tasks]) =>
      fc.record({
        cars: fc.tuple(...Array.from({ length: cars }, (_, car) => anyCar(car))),
        people: fc.tuple(...Array.from({ length: people }, (_, person) => anyPerson(person))),
        room: fc.integer({ min: 1, max: 2 }),
        jacks: fc.integer({ min: 1, max: 2 }),
        access: fc.constantFrom('none', 'both', 'both', 'openAlready', 'staysOpen'),
        ends: fc.tuple(anyWay(0), anyWay(1)),
        tasks: fc.tuple(...Array.from({ length: tasks }, (_, task) => anyTask(task, cars, people))),
        begun: fc.constantFrom('none', 'none', 'task0', 'up'),
      }),
    )
    .map(({ cars, people, room, jacks, access, ends, tasks, begun }) => {
      const { accesses, extra } = accessOf(access, ends);
      const known = tasks.map((task) => withoutUnknown(task, accesses));
      return {
        cars,
        people,
        places: [{ id: 'corner', room }],
        tools: [{ id: 'jack', count: jacks }],
        accesses,
        tasks: [...known, ...extra].map((task) => (task.id === begun ? begin(task) : task)),
      };
    });
}

function anyCar(car: number): fc.Arbitrary<ServiceCar> {
  return fc
    .record({ inTime: fc.nat(2), span: fc.integer({ min: 5, max: 9 }), more: fc.nat(6), hot: fc.nat(3) })
    .map(({ inTime, span, more, hot }) => ({
      id: `car${car}`,
      inTime,
      outTime: inTime + span,
      latest: inTime + span + more,
      hotUntil: inTime + hot,
    }));
}

function anyPerson(person: number) {
  return fc
    .record({
      skills: fc.constantFrom(
        ...(person === 0 ? [['engine'], ['engine', 'brakes']] : [['brakes'], [], ['brakes', 'engine']]),
      ),
      from: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, fc.nat(3)),
      break: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, fc.integer({ min: 4, max: 7 })),
    })
    .map(({ skills, from, break: pause }) => ({
      id: `person${person}`,
      skills,
      hours:
        pause > 0
          ? [
              { from, until: pause },
              { from: pause + 1, until: 30 },
            ]
          : [{ from, until: 30 }],
    }));
}

function anyWay(way: number): fc.Arbitrary<Way> {
  const crew = fc.record({
    skill: fc.constantFrom(undefined, 'engine', 'brakes'),
    count: fc.constantFrom(1, 1, 1, 2),
  });
  return fc
    .record({
      duration: fc.constantFrom(1, 2, 2, 3, 4),
      spread: fc.nat(2),
      crew: fc.oneof(
        { weight: 5, arbitrary: fc.array(crew, { minLength: 1, maxLength: 1 }) },
        fc.array(crew, { maxLength: 2 }),
      ),
      place: fc.constantFrom(undefined, undefined, 'corner'),
      tool: fc.constantFrom(0, 0, 0, 1, 1, 2),
      value: fc.nat(5),
    })
    .map(({ duration, spread, crew: wanted, place, tool, value }) => ({
      id: `way${way}`,
      duration: { low: duration, likely: duration, high: duration + spread },
      crew: wanted.map(({ skill, count }) => (skill === undefined ? { count } : { skill, count: 1 })),
      ...(place === undefined ? {} : { place }),
      tools: Array.from({ length: tool }, () => 'jack'),
      value,
    }));
}

function anyTask(task: number, cars: number, people: number): fc.Arbitrary<ServiceTask> {
  const rarely = fc.integer({ min: 0, max: 6 }).map((number) => number === 0);
  const link = fc.record({
    task: fc.nat(Math.max(0, task - 1)).map((other) => `task${other}`),
    lag: fc.constantFrom(0, 0, 1, 2),
    more: fc.constantFrom(undefined, undefined, 0, 2),
    together: rarely,
  });
  return fc
    .record({
      car: fc.constantFrom(0, 0, cars - 1),
      mandatory: fc.constantFrom(true, false),
      ways: fc
        .array(fc.nat(0), { minLength: 1, maxLength: 2 })
        .chain((list) => fc.tuple(...list.map((_, way) => anyWay(way)))),
      after: fc.array(link, { minLength: task > 0 && task % 2 === 0 ? 1 : 0, maxLength: task === 0 ? 0 : 1 }),
      notBefore: fc.constantFrom(0, 0, 0, 3),
      cold: rarely,
      fuelOpen: rarely,
      state: fc.constantFrom('any', 'open', 'open', 'closed'),
      pinned: fc.constantFrom('no', 'no', 'no', 'no', 'no', 'no', 'start', 'person', 'left', 'done'),
      person: fc.nat(people - 1),
    })
    .map(({ car, mandatory, ways, after, state, pinned, person, ...rest }) => ({
      ...rest,
      id: `task${task}`,
      car: `car${car}`,
      mandatory: mandatory && pinned !== 'left',
      ways,
      after: after.map(({ more, lag, ...one }) =>
        more === undefined ? { ...one, lag } : { ...one, lag, maxLag: lag + more },
      ),
      open: state === 'open' ? ['stands'] : [],
      closed: state === 'closed' ? ['stands'] : [],
      ...pinOf(pinned, person),
    }));
}

function pinOf(pinned: string, person: number): Pick<ServiceTask, 'pin'> {
  if (pinned === 'start') return { pin: { start: 4 } };
  if (pinned === 'person') return { pin: { people: [`person${person}`] } };
  if (pinned === 'left') return { pin: { done: false } };
  return pinned === 'done' ? { pin: { done: true, way: 'way0' } } : {};
}

/** Stands of the first car. */
function accessOf(
  kind: string,
  [first, second]: readonly [Way, Way],
): { accesses: Access[]; extra: ServiceTask[] } {
  if (kind === 'none') return { accesses: [], extra: [] };
  const up = { id: 'up', car: 'car0', ways: [first] };
  const down = { id: 'down', car: 'car0', ways: [second] };
  const stands = { id: 'stands', car: 'car0' };
  if (kind === 'openAlready') return { accesses: [{ ...stands, closing: 'down' }], extra: [down] };
  if (kind === 'staysOpen') return { accesses: [{ ...stands, opening: 'up' }], extra: [up] };
  return { accesses: [{ ...stands, opening: 'up', closing: 'down' }], extra: [up, down] };
}

function withoutUnknown(task: ServiceTask, accesses: readonly Access[]): ServiceTask {
  const isKnown = (id: string) => accesses.some((access) => access.id === id && access.car === task.car);
  return { ...task, open: task.open?.filter(isKnown) ?? [], closed: task.closed?.filter(isKnown) ?? [] };
}

function begin({ pin: _, open: _open, closed: _closed, ...task }: ServiceTask): ServiceTask {
  return { ...task, underWay: { since: 0, until: 3, way: 'way0', people: ['person0'] } };
}
