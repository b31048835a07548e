import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import type { CriticalTimes } from '../times/critical-times';

/**
 * Work over capacity, with what must come before and after (simple energetic reasoning): of the jobs that cannot start
 * before `head` and have at least `tail` to come after their finish, all work must fit between. Tries every head and tail
 * of every resource; head 0 and tail 0 give the plain resource bound.
 */
export function resourceBound(
  project: CompiledProject,
  { length, earliestStart, latestFinish }: CriticalTimes,
): number {
  const { size, resources, durations, needs, capacities } = project;
  const tails = Int32Array.from(latestFinish, (finish) => length - finish);
  let bound = 0;
  for (let resource = 0; resource < resources; resource += 1) {
    const work = Int32Array.from(
      durations,
      (duration, job) => duration * at(needs, job * resources + resource),
    );
    for (const head of new Set(earliestStart)) {
      const byTail = Array.from({ length: size }, (_, job) => job)
        .filter((job) => at(earliestStart, job) >= head && at(work, job) > 0)
        .toSorted((one, two) => at(tails, two) - at(tails, one));
      let total = 0;
      for (const job of byTail) {
        total += at(work, job);
        bound = Math.max(bound, head + Math.ceil(total / at(capacities, resource)) + at(tails, job));
      }
    }
  }
  return bound;
}
