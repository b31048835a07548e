import { type CompiledProject, compileProject } from '../compile-project';
import type { Project } from '../model';
import { criticalTimes } from '../times/critical-times';
import { criticalSequenceBound } from './critical-sequence-bound';
import { destructiveBound } from './destructive-bound';
import { resourceBound } from './resource-bound';

/** Lengths below which no schedule can be. */
export interface LowerBounds {
  criticalPath: number;
  resources: number;
  criticalSequence: number;
  /** The smallest deadline that cannot be refuted; at least as large as the others. */
  destructive: number;
  /** The largest of them. */
  best: number;
}

/**
 * How short the project could be at best: by the critical path, by work over capacity, by what does not fit beside
 * the critical path, and by deadlines that can be refuted. A schedule as long as the best bound is proven to be the shortest.
 *
 * @throws RangeError when {@link findProjectFault} finds one
 */
export function lowerBounds(project: Project): LowerBounds {
  return boundsOf(compileProject(project));
}

export function boundsOf(compiled: CompiledProject): LowerBounds {
  const times = criticalTimes(compiled);
  const criticalPath = times.length;
  const resources = resourceBound(compiled, times);
  const criticalSequence = criticalSequenceBound(compiled, times);
  const known = Math.max(criticalPath, resources, criticalSequence);
  const destructive = destructiveBound(compiled, times, known);
  return { criticalPath, resources, criticalSequence, destructive, best: destructive };
}
