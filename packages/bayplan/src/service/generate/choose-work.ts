import { at } from '../../at';
import { type CompiledService, isBegun } from '../compile-service';

export const LEFT = -1;

/** What presupposes what: tasks that go together, and the tasks that open and close what another needs. */
export interface Ties {
  /** Both or neither. */
  together: readonly (readonly [one: number, other: number])[];
  /** Done exactly when one of the users is. */
  ends: readonly { end: number; users: readonly number[] }[];
}

export function tiesOf({ service, links, tasks }: CompiledService): Ties {
  const numberOf = (id: string) => tasks.findIndex((task) => task.id === id);
  return {
    together: links.filter(({ together }) => together).map(({ before, after }) => [before, after] as const),
    ends: service.accesses.flatMap((access) => {
      const { id, opening, closing } = access;
      const users = tasks.filter(({ number }) => service.tasks[number]?.open?.includes(id));
      // The closing of what was open already, and both ends of what is begun, are done anyway.
      const ends =
        opening === undefined || isBegun(access, service.tasks)
          ? []
          : [opening, ...(closing === undefined ? [] : [closing])];
      return ends.map((end) => ({ end: numberOf(end), users: users.map(({ number }) => number) }));
    }),
  };
}

/**
 * Makes a wish for ways (or {@link LEFT}) one that can be: what must be done is done, what is left takes its ties with it,
 * what is done brings them along. False when that contradicts itself.
 */
export function settleWays({ tasks }: CompiledService, { together, ends }: Ties, ways: Int32Array): boolean {
  const take = (task: number) => {
    if (at(ways, task) === LEFT) ways[task] = 0;
  };
  for (const { number, must, mustNot } of tasks) {
    if (must) take(number);
    if (mustNot) ways[number] = LEFT;
  }
  for (let round = 0; round <= tasks.length; round += 1) {
    const before = ways.slice();
    for (const [one, other] of together) {
      if (at(ways, one) === at(ways, other) || (at(ways, one) !== LEFT && at(ways, other) !== LEFT)) continue;
      const mayDo = !tasks[one]?.mustNot && !tasks[other]?.mustNot;
      for (const task of [one, other]) {
        if (mayDo) take(task);
        else ways[task] = LEFT;
      }
    }
    for (const { end, users } of ends) {
      if (tasks[end]?.mustNot) for (const user of users) ways[user] = LEFT;
      if (users.some((user) => at(ways, user) !== LEFT)) take(end);
      else ways[end] = LEFT;
    }
    // A round may undo what it has done, so that it ends where it began and a tie is broken all the same.
    if (ways.every((way, task) => way === at(before, task)))
      return keepsDuty(tasks, ways) && keepsTies({ together, ends }, ways);
  }
  return false;
}

function keepsDuty(tasks: CompiledService['tasks'], ways: Int32Array): boolean {
  return tasks.every(({ number, must, mustNot, ways: known }) => {
    const way = at(ways, number);
    if (way === LEFT) return !must;
    return !mustNot && way < known.length;
  });
}

function keepsTies({ together, ends }: Ties, ways: Int32Array): boolean {
  const isDone = (task: number) => at(ways, task) !== LEFT;
  return (
    together.every(([one, other]) => isDone(one) === isDone(other)) &&
    ends.every(({ end, users }) => isDone(end) === users.some(isDone))
  );
}
