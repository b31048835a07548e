import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import type { CriticalTimes } from './critical-times';

/**
 * One chain of critical jobs from start to end, first job first: from the end backwards, each time the smallest job that the
 * last one had to wait for.
 */
export function findCriticalChain(project: CompiledProject, times: CriticalTimes): number[] {
  const { size, durations, before } = project;
  const { earliestStart, length } = times;
  const finishOf = (job: number) => at(earliestStart, job) + at(durations, job);
  const path: number[] = [];
  let last = Array.from({ length: size }, (_, job) => job).find((job) => finishOf(job) === length);
  while (last !== undefined) {
    path.unshift(last);
    const start = at(earliestStart, last);
    const to = at(before.first, last + 1);
    let held: number | undefined;
    for (let link = at(before.first, last); link < to && held === undefined; link += 1) {
      const other = at(before.others, link);
      if (finishOf(other) + at(before.lags, link) === start) held = other;
    }
    last = held;
  }
  return path;
}
