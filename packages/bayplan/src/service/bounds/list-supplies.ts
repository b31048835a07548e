import type { CompiledService, CompiledTask, CompiledWay } from '../compile-service';
import type { ServicePerson, ServiceTask, Stretch } from '../service-model';

/** Something that tasks use while they run. */
export interface Supply {
  /** How much of it there is at a time at most. */
  most: number;
  /** How much there is over a stretch of time: how much at a time, times how long. */
  amountIn: (stretch: Stretch) => number;
  /** How much of it a way of a task takes while it runs. */
  amountFor: (way: CompiledWay, task: CompiledTask) => number;
}

/** People, each group of them that can sit in the same seats, tools, places, and hands at a car where fuel may be open. */
export function listSupplies({ service, tasks }: CompiledService): Supply[] {
  const { places, tools } = service;
  const people = service.people.map((person) => ({ ...person, hours: hoursAtWork(person, service.tasks) }));
  const crews = tasks.flatMap(({ underWay, ways }) => (underWay ? [] : ways.flatMap(({ crew }) => crew)));
  const groups = new Map(crews.map(({ candidates }) => [candidates.join(), new Set(candidates)]));
  groups.delete([...people.keys()].join());
  return [
    { ...peopleIn(people), amountFor: ({ heads }) => heads },
    ...[...groups.values()].map((group) => ({
      ...peopleIn(people.filter((_, person) => group.has(person))),
      amountFor: ({ crew }: CompiledWay) =>
        crew.reduce(
          (sum, { count, candidates }) => sum + (candidates.every((person) => group.has(person)) ? count : 0),
          0,
        ),
    })),
    ...tools.map(({ count }, tool) => ({
      ...alwaysThere(count),
      amountFor: (way: CompiledWay) => way.tools[tool] ?? 0,
    })),
    ...places.map(({ room }, number) => ({
      ...alwaysThere(room),
      amountFor: ({ place, heads }: CompiledWay) => (place === number ? heads : 0),
    })),
    ...handsAtCars(tasks, people.length),
  ];
}

/** Never more hands at a car than there are people; open fuel takes them all. */
function handsAtCars(tasks: readonly CompiledTask[], people: number): Supply[] {
  const cars = new Set(tasks.filter(({ fuelOpen }) => fuelOpen).map(({ car }) => car));
  return [...cars].map((car) => ({
    ...alwaysThere(people),
    amountFor: ({ heads }, task) => {
      if (task.car !== car) return 0;
      return task.fuelOpen ? people : heads;
    },
  }));
}

function peopleIn(people: readonly Pick<ServicePerson, 'hours'>[]): Pick<Supply, 'most' | 'amountIn'> {
  const stretches = people.flatMap(({ hours }) => hours);
  return {
    most: people.length,
    amountIn: (stretch) => stretches.reduce((sum, one) => sum + sharedBy(one, stretch), 0),
  };
}

/** Each moment once; whoever has begun something stays until it is done, also outside their hours. */
function hoursAtWork({ id, hours }: ServicePerson, tasks: readonly ServiceTask[]): Stretch[] {
  const begun = tasks.flatMap(({ underWay }): Stretch[] =>
    underWay?.people.includes(id) ? [{ from: underWay.since, until: underWay.until }] : [],
  );
  const joined: { from: number; until: number }[] = [];
  for (const { from, until } of [...hours, ...begun].toSorted((one, other) => one.from - other.from)) {
    const last = joined.at(-1);
    if (last && from <= last.until) last.until = Math.max(last.until, until);
    else joined.push({ from, until });
  }
  return joined;
}

function alwaysThere(most: number): Pick<Supply, 'most' | 'amountIn'> {
  return { most, amountIn: ({ from, until }) => most * (until - from) };
}

function sharedBy(one: Stretch, other: Stretch): number {
  return Math.max(0, Math.min(one.until, other.until) - Math.max(one.from, other.from));
}
