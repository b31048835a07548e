import { at } from '../at';
import { type CompiledProject, compileProject } from '../compile-project';
import type { Project, Schedule } from '../model';
import { type PriorityRule, priorities } from './priorities';
import { bothSides } from './side';

export interface RuleOptions {
  rule: PriorityRule;
  /** `serial`: job by job, each as early as it can. `parallel`: moment by moment, whatever can start starts. */
  scheme: 'serial' | 'parallel';
  /** Push everything late, then early again (double justification): never longer, and counts as two more schedules. */
  justify?: boolean;
}

/**
 * One schedule by one priority rule, made by the serial or the parallel generation scheme (Kelley 1963; Kolisch 1996). Ties
 * go to the smaller number. Serial schedules are active, parallel ones non-delay; the shortest schedule is always among the
 * active ones, but not always among the non-delay ones.
 *
 * Double justification (Valls, Ballestín & Quintanilla 2005): everything is pushed as late as it can go, the last to finish
 * first (of two the larger number); then as early as it can go, the first to start first (of two the smaller number).
 *
 * @throws RangeError when {@link findProjectFault} finds one
 * @example
 * scheduleByRule(project, { rule: 'latestFinish', scheme: 'serial' }) // { starts: [0, 2, 2], makespan: 7 }
 */
export function scheduleByRule(project: Project, { rule, scheme, justify = false }: RuleOptions): Schedule {
  const compiled = compileProject(project);
  const [forward, backward] = bothSides(compiled);
  const starts = new Int32Array(compiled.size);
  const values = priorities(compiled, rule);
  let makespan =
    scheme === 'serial'
      ? forward.generator.serialByPriority(values, starts)
      : forward.generator.parallelByPriority(values, starts);
  if (justify) {
    const late = new Int32Array(compiled.size);
    makespan = backward.justify(forward.project, starts, makespan, late);
    makespan = forward.justify(backward.project, late, makespan, starts);
  }
  return toSchedule(compiled, starts, makespan);
}

/** Back from jobs to the order of the project's activities. */
export function toSchedule({ numberOf }: CompiledProject, starts: Int32Array, makespan: number): Schedule {
  const byNumber = new Array<number>(starts.length).fill(0);
  starts.forEach((start, job) => {
    byNumber[at(numberOf, job)] = start;
  });
  return { starts: byNumber, makespan };
}
