import type { CompiledService } from '../compile-service';
import { type Draft, isTrue } from './draft';
import type { TaskNumbers } from './encode-service';
import type { Term } from './linear';

/** For each link a flag that is up when both tasks have people and nobody does both. */
export function encodeHandOvers(
  draft: Draft,
  { links }: CompiledService,
  tasks: readonly TaskNumbers[],
): Term[] {
  return links.flatMap(({ before, after }) => {
    const one = tasks[before];
    const other = tasks[after];
    if (!one || !other) return [];
    const handed = draft.flag();
    const staying = [...one.works].flatMap(([person, flag]) => {
      const otherFlag = other.works.get(person);
      if (otherFlag === undefined) return [];
      const both = draft.flag();
      draft.whenAll([isTrue(both)], isTrue(flag));
      draft.whenAll([isTrue(both)], isTrue(otherFlag));
      return isTrue(both);
    });
    for (const way of one.ways) {
      for (const otherWay of other.ways) {
        if (way.way.heads === 0 || otherWay.way.heads === 0) continue;
        draft.whenAll([isTrue(way.taken), isTrue(otherWay.taken)], isTrue(handed), ...staying);
      }
    }
    return { slot: 2 * handed, factor: 1 };
  });
}
