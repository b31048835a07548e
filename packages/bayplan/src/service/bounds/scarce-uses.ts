import { at } from '../../at';
import type { CompiledService, CompiledTask, CompiledWay } from '../compile-service';
import type { Stretch } from '../service-model';
import { type Room, roomOf } from './room-of';

/** Something of which there may be too little in a stretch of time. */
export interface Scarce {
  /** So much of it there is: how much at a time, times how long. */
  capacity: number;
  /** How much of it each way of each task takes at least, wherever the task is put. */
  uses: readonly Float64Array[];
}

interface Supply {
  amountIn: (stretch: Stretch) => number;
  amountFor: (way: CompiledWay) => number;
}

/**
 * What may run short while the cars leave on time: people, those who have some skill, tools and places, over each stretch of
 * time from where something may begin to where something must be finished (energetic reasoning: Baptiste, Le Pape &
 * Nuijten 2001, Constraint-Based Scheduling, chapter 3). What all tasks together can't use up is left out.
 */
export function listScarce(service: CompiledService): Scarce[] {
  const room = roomOf(service);
  const stretches = stretchesOf(room);
  return listSupplies(service).flatMap(({ amountIn, amountFor }) =>
    stretches.flatMap((stretch): Scarce[] => {
      const uses = service.tasks.map((task) =>
        Float64Array.from(task.ways, (way) => amountFor(way) * leastInside(task, way, room, stretch)),
      );
      const capacity = amountIn(stretch);
      const most = uses.reduce((sum, ways) => sum + Math.max(0, ...ways), 0);
      return most > capacity ? [{ capacity, uses }] : [];
    }),
  );
}

function stretchesOf({ earliest, latest }: Room): Stretch[] {
  const ends = [...new Set(latest)];
  return [...new Set(earliest)].flatMap((from) =>
    ends.filter((until) => until > from).map((until) => ({ from, until })),
  );
}

/** As far outside the stretch as it can be, on either side. */
function leastInside(
  { number }: CompiledTask,
  { duration }: CompiledWay,
  { earliest, latest }: Room,
  { from, until }: Stretch,
): number {
  const early = at(earliest, number) + duration - from;
  const late = until - (at(latest, number) - duration);
  return Math.max(0, Math.min(early, late, duration, until - from));
}

function listSupplies({ service }: CompiledService): Supply[] {
  const { people, places, tools } = service;
  const skills = [...new Set(people.flatMap((person) => person.skills))];
  const lengthOf = ({ from, until }: Stretch) => until - from;
  const hoursOf = (able: typeof people) => (stretch: Stretch) =>
    able.reduce((sum, { hours }) => sum + hours.reduce((own, one) => own + sharedBy(one, stretch), 0), 0);
  return [
    { amountIn: hoursOf(people), amountFor: ({ heads }) => heads },
    ...skills.map((skill) => ({
      amountIn: hoursOf(people.filter((person) => person.skills.includes(skill))),
      amountFor: ({ crew }: CompiledWay) =>
        crew.reduce((sum, one) => sum + (one.skill === skill ? one.count : 0), 0),
    })),
    ...tools.map(({ count }, tool) => ({
      amountIn: (stretch: Stretch) => count * lengthOf(stretch),
      amountFor: (way: CompiledWay) => way.tools[tool] ?? 0,
    })),
    ...places.map(({ room }, number) => ({
      amountIn: (stretch: Stretch) => room * lengthOf(stretch),
      amountFor: ({ place, heads }: CompiledWay) => (place === number ? heads : 0),
    })),
  ];
}

function sharedBy(one: Stretch, other: Stretch): number {
  return Math.max(0, Math.min(one.until, other.until) - Math.max(one.from, other.from));
}
