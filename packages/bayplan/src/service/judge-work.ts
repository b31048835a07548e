import type { BayPlan, Objective, PlannedWork } from './bay-plan';
import type { CompiledService } from './compile-service';

/** What was decided about a task: nothing when it is left. `people` crew by crew of the way. */
export type Decided = { way: number; start: number; people: readonly (readonly number[])[] } | undefined;

/** A plan in numbers, task by task, with what it is worth. */
export interface Solution {
  decided: readonly Decided[];
  objective: Objective;
}

export function judgeWork(service: CompiledService, decided: readonly Decided[]): Solution {
  const finishes = service.cars.map(({ inTime }) => inTime);
  const people = decided.map((one) => one?.people.flat() ?? []);
  let value = 0;
  service.tasks.forEach(({ car, ways, number }) => {
    const one = decided[number];
    const way = one && ways[one.way];
    if (!way) return;
    value += way.value;
    finishes[car] = Math.max(finishes[car] ?? 0, one.start + way.duration);
  });
  let late = 0;
  service.cars.forEach(({ outTime }, car) => {
    late += Math.max(0, (finishes[car] ?? 0) - outTime);
  });
  const handOvers = service.links.filter(({ before, after }) => {
    const one = people[before] ?? [];
    const other = people[after] ?? [];
    return one.length > 0 && other.length > 0 && !one.some((person) => other.includes(person));
  }).length;
  return {
    decided,
    objective: { late, value, finish: finishes.reduce((sum, finish) => sum + finish, 0), handOvers },
  };
}

/** Back from numbers to names. */
export function toBayPlan({ service, tasks }: CompiledService, { decided, objective }: Solution): BayPlan {
  const work = tasks.flatMap(({ id, ways, number }): PlannedWork[] => {
    const one = decided[number];
    const way = one && ways[one.way];
    if (!way) return [];
    const people = way.crew.flatMap(({ skill }, crew) =>
      (one.people[crew] ?? []).map((person) => ({
        person: service.people[person]?.id ?? '',
        ...(skill === undefined ? {} : { skill }),
      })),
    );
    return [{ task: id, way: way.id, start: one.start, finish: one.start + way.duration, people }];
  });
  const left = tasks.filter(({ number }) => !decided[number]).map(({ id }) => id);
  return { work, left, objective };
}
