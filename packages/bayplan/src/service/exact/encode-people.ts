import type { CompiledService } from '../compile-service';
import { atLeast, atMost, type Draft, isFalse, isTrue } from './draft';
import type { Orders, TaskNumbers } from './encode-service';

/** Hours, one task at a time, and who is pinned. */
export function encodePeople(
  draft: Draft,
  { service }: CompiledService,
  tasks: readonly TaskNumbers[],
  orders: Orders,
): void {
  service.people.forEach((_, person) => {
    for (const one of tasks) encodeHours(draft, one, person, service.people[person]?.hours ?? []);
    encodeOneAtATime(draft, tasks, person, orders);
  });
  for (const { task, done, works } of tasks) {
    for (const person of task.people) {
      const flag = works.get(person);
      draft.whenAll([isTrue(done)], ...(flag === undefined ? [] : [isTrue(flag)]));
    }
  }
  encodeCrowds(draft, tasks);
}

/** For each moment at which one stretch has ended and the next not begun: finished before it or started after. */
function encodeHours(
  draft: Draft,
  { task, start, finish, works }: TaskNumbers,
  person: number,
  hours: readonly { from: number; until: number }[],
): void {
  const flag = works.get(person);
  if (flag === undefined || task.underWay) return;
  const stretches = hours.toSorted((one, other) => one.from - other.from);
  if (stretches.length === 0) {
    draft.either(isFalse(flag));
    return;
  }
  const inStretch = stretches.map((stretch) => {
    const within = draft.flag();
    draft.whenAll([isTrue(within)], atLeast(start, stretch.from));
    draft.whenAll([isTrue(within)], atMost(finish, stretch.until));
    return isTrue(within);
  });
  draft.whenAll([isTrue(flag)], ...inStretch);
}

function encodeOneAtATime(draft: Draft, tasks: readonly TaskNumbers[], person: number, orders: Orders): void {
  tasks.forEach(({ works }, one) => {
    const flag = works.get(person);
    if (flag === undefined) return;
    for (let other = one + 1; other < tasks.length; other += 1) {
      const otherFlag = tasks[other]?.works.get(person);
      if (otherFlag === undefined) continue;
      const either = [isTrue(orders.flag(one, other)), isTrue(orders.flag(other, one))];
      draft.whenAll([isTrue(flag), isTrue(otherFlag)], ...either);
    }
  });
}

/** Adds nothing new, but is seen sooner: never more work at a time for a group of people than there are people in it. */
function encodeCrowds(draft: Draft, tasks: readonly TaskNumbers[]): void {
  const crews = tasks.flatMap(({ start, ways }) =>
    ways.flatMap(({ way, taken }) =>
      way.crew.map(({ count, candidates }) => ({
        candidates,
        job: { start, duration: way.duration, amount: count, ifSlot: 2 * taken },
      })),
    ),
  );
  const groups = new Map(crews.map(({ candidates }) => [candidates.join(), new Set(candidates)]));
  for (const group of groups.values()) {
    const jobs = crews
      .filter(({ candidates }) => candidates.every((person) => group.has(person)))
      .map(({ job }) => job);
    draft.table(jobs, group.size);
  }
}
