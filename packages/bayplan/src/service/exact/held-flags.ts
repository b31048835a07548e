import type { Solution } from '../judge-work';
import type { Encoding } from './encode-service';
import { comesFirst } from './service-chooser';

/**
 * What holds of the work of a plan that is not free: its ways and people, and which of two goes first where both have
 * somebody, a tool or a place in common. Its times may move, and what the plan leaves may come in.
 */
export function heldFlags(
  { tasks, orders }: Encoding,
  { decided }: Solution,
  free: ReadonlySet<number>,
): number[] {
  const kept = new Map(
    tasks.flatMap((numbers) => {
      const one = decided[numbers.task.number];
      const way = one && numbers.ways[one.way];
      if (!way || free.has(numbers.task.number)) return [];
      const people = one.people.flat();
      const seats = one.people.flatMap((crew, place) =>
        crew.flatMap((person) => way.crews[place]?.get(person) ?? []),
      );
      return [[numbers.task.number, { people, way: way.way, flags: [way.taken, ...seats] }]];
    }),
  );
  const share = (first: number, second: number) => {
    const [one, other] = [kept.get(first), kept.get(second)];
    if (!one || !other) return false;
    return (
      one.people.some((person) => other.people.includes(person)) ||
      one.way.tools.some((amount, tool) => amount > 0 && (other.way.tools[tool] ?? 0) > 0) ||
      (one.way.place !== undefined && one.way.place === other.way.place)
    );
  };
  const inOrder = orders.filter(
    ({ first, second }) => share(first, second) && comesFirst(tasks, decided, first, second),
  );
  return [...[...kept.values()].flatMap(({ flags }) => flags), ...inOrder.map(({ flag }) => flag)];
}
