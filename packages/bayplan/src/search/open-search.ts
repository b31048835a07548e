import { boundsOf } from '../bounds/lower-bounds';
import { compileProject } from '../compile-project';
import { toSchedule } from '../generate/schedule-by-rule';
import type { Project, Schedule } from '../model';
import { alternate } from './alternate';
import { Chance } from './chance';

export interface SearchOptions {
  /** A whole number. The same project, seed and number of schedules give the same plan. */
  seed: number;
}

export interface SearchResult {
  best: Schedule;
  /** No schedule can be shorter than this; the length of the best when it is proven. */
  lowerBound: number;
  /** Whether the best is as short as the lower bound: nothing better exists, and further steps change nothing. */
  proven: boolean;
  /** Schedules made so far. */
  schedules: number;
}

export interface Search {
  /** Makes at most so many further schedules and tells the best of all. How they are divided into steps doesn't matter. */
  step: (maxSchedules: number) => SearchResult;
}

/**
 * A search for a short schedule, to be driven in steps: the caller owns the time and stops when it likes.
 *
 * Method: a genetic algorithm with forward-backward improvement on two populations, one of left-justified and one of
 * right-justified schedules, which breed in turn (Debels & Vanhoucke 2005); the family is that of Hartmann (1998, activity
 * lists), Alcaraz & Maroto (2001) and Valls, Ballestín & Quintanilla (2005, 2008). A child takes its parent's starts as an
 * activity list, with the order in one window of time changed by chance or taken from a second parent (see `breed`), and is
 * decoded by the serial or the parallel scheme in its population's direction of time. It is then justified into
 * the other direction and, if good enough, joins the other population: over two generations that is a double justification
 * with a search step in each half. The first members come from five priority rules under both schemes and both
 * directions, then from blurred latest finish times (Kolisch & Drexl 1996 sample likewise). A child that came out like
 * one seen before, or much longer than the best, is not justified.
 *
 * After three hundred schedules an exact search takes turns with the breeding, schedule by schedule, each starting from the
 * best of both; it learns from contradictions and in the end proves that nothing shorter exists (see `proveShortest`).
 *
 * Counting follows Kolisch & Hartmann (2006): a schedule is every pass that gives each activity a start at most once, so a
 * child costs one or two, and each descent of the exact search down to a contradiction costs one, although it seldom gives
 * every activity a start. The search ends early when a lower bound ({@link lowerBounds}) is reached or the best is proven.
 *
 * @throws RangeError when {@link findProjectFault} finds a fault, or the seed or a step is not a whole number
 * @example
 * const search = openSearch(project, { seed: 1 });
 * search.step(500); // { best: { starts: [0, 2, 2], makespan: 7 }, lowerBound: 7, proven: true, schedules: 1 }
 */
export function openSearch(project: Project, { seed }: SearchOptions): Search {
  if (!Number.isSafeInteger(seed)) {
    throw new RangeError(`openSearch: the seed must be a whole number, not ${seed}.`);
  }
  const compiled = compileProject(project);
  const incumbent = { starts: new Int32Array(compiled.size), makespan: Number.POSITIVE_INFINITY };
  const working = alternate(compiled, incumbent, new Chance(seed));
  let lowerBound = boundsOf(compiled).best;
  let schedules = 0;
  const step = (maxSchedules: number): SearchResult => {
    if (!Number.isSafeInteger(maxSchedules) || maxSchedules < 1) {
      throw new RangeError(`step: the schedules must be a whole number from 1, not ${maxSchedules}.`);
    }
    for (let left = maxSchedules; left > 0 && incumbent.makespan > lowerBound; left -= 1) {
      schedules += 1;
      if (working.next().value) lowerBound = incumbent.makespan;
    }
    const best = toSchedule(compiled, incumbent.starts, incumbent.makespan);
    return { best, lowerBound, proven: best.makespan === lowerBound, schedules };
  };
  return { step };
}
