import { at } from '../at';
import { compileProject } from '../compile-project';
import type { Project } from '../model';
import { criticalTimes } from './critical-times';
import { findCriticalChain } from './find-critical-chain';

export interface ActivityTimes {
  id: string;
  earliestStart: number;
  earliestFinish: number;
  latestStart: number;
  latestFinish: number;
  /** How late it may start without making the project longer. */
  totalFloat: number;
  /** How late it may start without making anything else later than its earliest start. */
  freeFloat: number;
  critical: boolean;
}

export interface CriticalPath {
  length: number;
  /** In the order of `project.activities`. */
  times: ActivityTimes[];
  /** One chain of critical activities from start to end; where several are critical, the smaller number goes first. */
  path: string[];
}

/**
 * The critical path method (Kelley & Walker 1959): when each activity could start and must finish if people and tools
 * were plenty, and how much room it has. Whatever is scarce can only make the project longer.
 *
 * @throws RangeError when {@link findProjectFault} finds one
 * @example
 * criticalPath({ resources: [], activities: [lift, { id: 'wheels', duration: 3, needs: [], after: [{ activity: 'lift' }] }] })
 * // { length: 5, path: ['lift', 'wheels'], times: [{ id: 'lift', earliestStart: 0, latestStart: 0, … }, …] }
 */
export function criticalPath(project: Project): CriticalPath {
  const compiled = compileProject(project);
  const { durations, behind, numberOf } = compiled;
  const plenty = criticalTimes(compiled);
  const { length, earliestStart, latestFinish } = plenty;
  const idOf = (job: number): string => project.activities[at(numberOf, job)]?.id ?? '';
  const timesOf = (job: number): ActivityTimes => {
    const start = at(earliestStart, job);
    const finish = start + at(durations, job);
    let free = length - finish;
    for (let link = at(behind.first, job); link < at(behind.first, job + 1); link += 1) {
      free = Math.min(free, at(earliestStart, at(behind.others, link)) - at(behind.lags, link) - finish);
    }
    const totalFloat = at(latestFinish, job) - finish;
    return {
      id: idOf(job),
      earliestStart: start,
      earliestFinish: finish,
      latestStart: start + totalFloat,
      latestFinish: finish + totalFloat,
      totalFloat,
      freeFloat: free,
      critical: totalFloat === 0,
    };
  };
  const byId = new Map(Array.from(durations, (_, job) => timesOf(job)).map((times) => [times.id, times]));
  const times = project.activities.flatMap(({ id }) => byId.get(id) ?? []);
  const path = findCriticalChain(compiled, plenty).map(idOf);
  return { length, times, path };
}
