import type { CompiledService } from '../compile-service';
import type { Draft } from './draft';
import type { TaskNumbers } from './encode-service';
import type { Term } from './linear';

/** When each car is finished, and how late that is: both at least, since less is better. */
export function encodeCars(
  draft: Draft,
  { cars, latest }: CompiledService,
  tasks: readonly TaskNumbers[],
): { late: Term[]; finish: Term[] } {
  const late: Term[] = [];
  const finish: Term[] = [];
  cars.forEach(({ inTime, outTime }, car) => {
    const finished = draft.number(inTime, Math.max(inTime, latest));
    const beyond = draft.number(0, Math.max(0, latest - outTime));
    for (const one of tasks) if (one.task.car === car) draft.order(one.finish, finished, 0, one.done);
    draft.order(finished, beyond, -outTime);
    finish.push({ slot: 2 * finished, factor: 1 });
    late.push({ slot: 2 * beyond, factor: 1 });
  });
  return { late, finish };
}
