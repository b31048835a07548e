import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import { criticalTimes } from '../times/critical-times';

/**
 * Who goes first. `latestFinish`, `latestStart`, `leastSlack` and `rankPositionalWeight` are the rules of Davis & Patterson
 * (1975) and Alvarez-Valdes & Tamarit (1989): times are those of the critical path, slack is its total float, and the
 * weight of a job is its duration and the durations of all that wait directly for it. `mostFollowers` counts all that wait
 * for it, directly or not; `activityNumber` is the order of the project.
 */
export const PRIORITY_RULES = [
  'latestFinish',
  'latestStart',
  'leastSlack',
  'rankPositionalWeight',
  'mostFollowers',
  'activityNumber',
] as const;

export type PriorityRule = (typeof PRIORITY_RULES)[number];

/** A value for each job; the least goes first. */
export function priorities(project: CompiledProject, rule: PriorityRule): Float64Array {
  const { durations } = project;
  const { earliestStart, latestFinish } = criticalTimes(project);
  const valueFor = (job: number): number => {
    switch (rule) {
      case 'latestFinish':
        return at(latestFinish, job);
      case 'latestStart':
        return at(latestFinish, job) - at(durations, job);
      case 'leastSlack':
        return at(latestFinish, job) - at(durations, job) - at(earliestStart, job);
      case 'rankPositionalWeight':
        return -rankPositionalWeight(project, job);
      case 'mostFollowers':
        return -followersOf(project, job).size;
      case 'activityNumber':
        return at(project.numberOf, job);
    }
  };
  return Float64Array.from({ length: project.size }, (_, job) => valueFor(job));
}

function rankPositionalWeight({ durations, behind }: CompiledProject, job: number): number {
  let weight = at(durations, job);
  for (let link = at(behind.first, job); link < at(behind.first, job + 1); link += 1) {
    weight += at(durations, at(behind.others, link));
  }
  return weight;
}

function followersOf(project: CompiledProject, job: number, found = new Set<number>()): Set<number> {
  const { first, others } = project.behind;
  for (let link = at(first, job); link < at(first, job + 1); link += 1) {
    const other = at(others, link);
    if (found.has(other)) continue;
    found.add(other);
    followersOf(project, other, found);
  }
  return found;
}
