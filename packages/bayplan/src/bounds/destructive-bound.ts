import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import type { CriticalTimes } from '../times/critical-times';
import { findPairs, narrow, type Pair, type Windows } from './windows';

/**
 * The destructive bound (Klein & Scholl 1999): the smallest deadline that cannot be refuted. A deadline is refuted when the
 * windows it leaves become too small ({@link narrow}), or when in some stretch of time more work must be done than there is
 * capacity for (energetic reasoning, Baptiste, Le Pape & Nuijten 1999). A shorter deadline leaves smaller windows, so the
 * smallest can be found by halving.
 */
export function destructiveBound(project: CompiledProject, times: CriticalTimes, known: number): number {
  const pairs = findPairs(project);
  let refuted = known - 1;
  let open = oneAfterTheOther(project);
  while (open - refuted > 1) {
    const middle = Math.floor((open + refuted) / 2);
    if (canRefute(project, pairs, times, middle)) refuted = middle;
    else open = middle;
  }
  return open;
}

/** A length that certainly suffices. */
function oneAfterTheOther({ durations, before }: CompiledProject): number {
  const sum = (numbers: Int32Array) => numbers.reduce((total, number) => total + number, 0);
  return sum(durations) + sum(before.lags);
}

function canRefute(
  project: CompiledProject,
  pairs: readonly Pair[],
  { length, earliestStart, latestFinish }: CriticalTimes,
  deadline: number,
): boolean {
  const windows = {
    earliestStart: earliestStart.slice(),
    latestFinish: latestFinish.map((finish) => finish + deadline - length),
  };
  return !narrow(project, pairs, windows) || isOverfull(project, windows);
}

/** Whether some stretch between an earliest start and a latest finish must hold more work than fits. */
function isOverfull(project: CompiledProject, windows: Windows): boolean {
  const { resources, capacities } = project;
  const work = new Float64Array(resources);
  const ends = [...new Set(windows.latestFinish)];
  for (const from of new Set(windows.earliestStart)) {
    for (const to of ends) {
      if (to <= from) continue;
      addWorkWithin(project, windows, from, to, work);
      for (let resource = 0; resource < resources; resource += 1) {
        if (at(work, resource) > at(capacities, resource) * (to - from)) return true;
      }
    }
  }
  return false;
}

/** The work that falls between two times however early or late each job is put. */
function addWorkWithin(
  { size, resources, durations, needs }: CompiledProject,
  { earliestStart, latestFinish }: Windows,
  from: number,
  to: number,
  work: Float64Array,
): void {
  work.fill(0);
  for (let job = 0; job < size; job += 1) {
    const duration = at(durations, job);
    const afterFrom = at(earliestStart, job) + duration - from;
    const beforeTo = to - at(latestFinish, job) + duration;
    const within = Math.min(duration, to - from, afterFrom, beforeTo);
    if (within <= 0) continue;
    for (let resource = 0; resource < resources; resource += 1) {
      work[resource] = at(work, resource) + within * at(needs, job * resources + resource);
    }
  }
}
