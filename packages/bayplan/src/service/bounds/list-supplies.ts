import type { CompiledService, CompiledWay } from '../compile-service';
import type { ServicePerson, Stretch } from '../service-model';

/** Something that tasks use while they run. */
export interface Supply {
  /** How much of it there is at a time at most. */
  most: number;
  /** How much there is over a stretch of time: how much at a time, times how long. */
  amountIn: (stretch: Stretch) => number;
  /** How much of it a way takes while it runs. */
  amountFor: (way: CompiledWay) => number;
}

/** People, those who have some skill, tools and places. */
export function listSupplies({ service: { people, places, tools } }: CompiledService): Supply[] {
  const skills = [...new Set(people.flatMap((person) => person.skills))];
  return [
    { ...peopleIn(people), amountFor: ({ heads }) => heads },
    ...skills.map((skill) => ({
      ...peopleIn(people.filter((person) => person.skills.includes(skill))),
      amountFor: ({ crew }: CompiledWay) =>
        crew.reduce((sum, one) => sum + (one.skill === skill ? one.count : 0), 0),
    })),
    ...tools.map(({ count }, tool) => ({
      ...alwaysThere(count),
      amountFor: (way: CompiledWay) => way.tools[tool] ?? 0,
    })),
    ...places.map(({ room }, number) => ({
      ...alwaysThere(room),
      amountFor: ({ place, heads }: CompiledWay) => (place === number ? heads : 0),
    })),
  ];
}

function peopleIn(people: readonly ServicePerson[]): Pick<Supply, 'most' | 'amountIn'> {
  const stretches = people.flatMap(({ hours }) => hours);
  return {
    most: people.length,
    amountIn: (stretch) => stretches.reduce((sum, one) => sum + sharedBy(one, stretch), 0),
  };
}

function alwaysThere(most: number): Pick<Supply, 'most' | 'amountIn'> {
  return { most, amountIn: ({ from, until }) => most * (until - from) };
}

function sharedBy(one: Stretch, other: Stretch): number {
  return Math.max(0, Math.min(one.until, other.until) - Math.max(one.from, other.from));
}
