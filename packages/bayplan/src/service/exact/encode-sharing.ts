import type { CompiledService } from '../compile-service';
import { type Draft, isTrue } from './draft';
import type { Orders, TaskNumbers, WayNumbers } from './encode-service';

/** Tools, places, and fuel that is open. */
export function encodeSharing(
  draft: Draft,
  { service }: CompiledService,
  tasks: readonly TaskNumbers[],
  orders: Orders,
): void {
  for (const [tool, { count }] of service.tools.entries()) {
    encodeUse(draft, tasks, (way) => way.tools[tool] ?? 0, count, orders);
  }
  for (const [place, { room }] of service.places.entries()) {
    encodeUse(draft, tasks, (way) => (way.place === place ? way.heads : 0), room, orders);
  }
  for (const one of tasks) {
    if (!one.task.fuelOpen) continue;
    for (const other of tasks) {
      if (other !== one && other.task.car === one.task.car)
        encodeApart(draft, one.done, other.done, one, other, orders);
    }
  }
}

/** Ways that are too much for one another go one after the other; the rest is seen to by a time-table. */
function encodeUse(
  draft: Draft,
  tasks: readonly TaskNumbers[],
  amountOf: (way: WayNumbers['way']) => number,
  capacity: number,
  orders: Orders,
): void {
  const uses = tasks.flatMap((one) =>
    one.ways
      .map(({ way, taken }) => ({ one, way, taken, amount: amountOf(way) }))
      .filter(({ amount }) => amount > 0),
  );
  for (const { taken, amount } of uses)
    if (amount > capacity) draft.either({ slot: 2 * taken + 1, value: 0 });
  uses.forEach((use, place) => {
    for (const other of uses.slice(place + 1)) {
      if (other.one === use.one || use.amount + other.amount <= capacity) continue;
      encodeApart(draft, use.taken, other.taken, use.one, other.one, orders);
    }
  });
  const jobs = uses.map(({ one, way, taken, amount }) => ({
    start: one.start,
    duration: way.duration,
    amount,
    ifSlot: 2 * taken,
  }));
  draft.table(jobs, capacity);
}

/** When both flags are up, one task is finished before the other starts. */
function encodeApart(
  draft: Draft,
  flag: number,
  otherFlag: number,
  one: TaskNumbers,
  other: TaskNumbers,
  orders: Orders,
): void {
  const [first, second] = [one.task.number, other.task.number];
  draft.whenAll(
    [isTrue(flag), isTrue(otherFlag)],
    isTrue(orders.flag(first, second)),
    isTrue(orders.flag(second, first)),
  );
}
