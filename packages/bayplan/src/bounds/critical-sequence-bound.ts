import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import type { CriticalTimes } from '../times/critical-times';
import { findCriticalChain } from '../times/find-critical-chain';

/**
 * The critical sequence bound (Stinson, Davis & Khumawala 1978): a job that does not fit beside the critical path for its
 * whole duration must push that path apart. For each job, the longest unbroken time that it could run beside the path,
 * between its earliest start and latest finish; what is missing to its duration is added to the length.
 */
export function criticalSequenceBound(project: CompiledProject, times: CriticalTimes): number {
  const { size, durations } = project;
  const path = findCriticalChain(project, times);
  const onPath = new Set(path);
  let longest = 0;
  for (let job = 0; job < size; job += 1) {
    if (onPath.has(job)) continue;
    longest = Math.max(longest, at(durations, job) - longestBeside(project, times, path, job));
  }
  return times.length + longest;
}

function longestBeside(
  project: CompiledProject,
  { earliestStart, latestFinish }: CriticalTimes,
  path: readonly number[],
  job: number,
): number {
  const end = at(latestFinish, job);
  let since = at(earliestStart, job);
  let longest = 0;
  for (const critical of path) {
    if (fitBeside(project, job, critical)) continue;
    const start = at(earliestStart, critical);
    longest = Math.max(longest, Math.min(start, end) - since);
    since = Math.max(since, start + at(project.durations, critical));
  }
  return Math.min(Math.max(longest, end - since), at(project.durations, job));
}

function fitBeside({ resources, needs, capacities }: CompiledProject, one: number, other: number): boolean {
  for (let resource = 0; resource < resources; resource += 1) {
    const together = at(needs, one * resources + resource) + at(needs, other * resources + resource);
    if (together > at(capacities, resource)) return false;
  }
  return true;
}
