import { checkSchedule, lowerBounds, openSearch, type Project } from '@halfshaft/bayplan';

/** Seconds within which a service-size project should be proven. */
const SOON = 10;

/** A project and the length that its schedules are measured from. */
export interface Instance {
  name: string;
  project: Project;
  reference: number;
}

export interface Measured {
  makespan: number;
  schedules: number;
  proven: boolean;
  /** Per cent above the reference. */
  deviation: number;
  /** Per cent above the critical path, as tables of larger projects count. */
  fromCriticalPath: number;
  /** Of the clock, since the search was opened. */
  seconds: number;
}

/**
 * One search, paused at each budget of schedules.
 *
 * @throws Error when a schedule breaks a rule of its project, or more were made than allowed
 */
export function measureSearch(
  { name, project, reference }: Instance,
  budgets: readonly number[],
  seed: number,
): Measured[] {
  const { criticalPath } = lowerBounds(project);
  const search = openSearch(project, { seed });
  const since = performance.now();
  let made = 0;
  return budgets.map((budget) => {
    const { best, proven, schedules } = search.step(budget - made);
    made = budget;
    const faults = checkSchedule(project, best);
    if (faults[0]) throw new Error(`${name}: ${faults[0].sentence}`);
    if (schedules > budget) throw new Error(`${name}: ${schedules} schedules were made, ${budget} allowed.`);
    const seconds = (performance.now() - since) / 1000;
    return {
      makespan: best.makespan,
      schedules,
      proven,
      deviation: (100 * (best.makespan - reference)) / reference,
      fromCriticalPath: (100 * (best.makespan - criticalPath)) / criticalPath,
      seconds,
    };
  });
}

/** One line for a budget; `from` says in words what the reference is, unless it is the critical path. */
export function printAverages(budget: number, results: readonly Measured[], from?: string): void {
  const total = (measureOf: (result: Measured) => number) =>
    results.reduce((sum, result) => sum + measureOf(result), 0);
  const count = results.length;
  const mean = (measureOf: (result: Measured) => number) => (total(measureOf) / count).toFixed(3);
  const at = total(({ deviation }) => (deviation === 0 ? 1 : 0));
  const below = total(({ deviation }) => (deviation < 0 ? 1 : 0));
  const proven = total((result) => (result.proven ? 1 : 0));
  const soon = total((result) => (result.proven && result.seconds <= SOON ? 1 : 0));
  const fromReference = from ? `${mean(({ deviation }) => deviation)} % from ${from}, ` : '';
  console.log(
    `${budget} schedules, ${count} projects: ${fromReference}${mean(({ fromCriticalPath }) => fromCriticalPath)} % from the critical path; ` +
      `sum ${total(({ makespan }) => makespan)}; at it ${at}, below it ${below}; ` +
      `proven ${((100 * proven) / count).toFixed(1)} %, within ${SOON} s each ${((100 * soon) / count).toFixed(1)} %; ${total(({ seconds }) => seconds).toFixed(1)} s`,
  );
}

/** Budgets as they stand on a command line, `1000,5000`: whole and rising; undefined when they are not. */
export function readBudgets(text: string): number[] | undefined {
  const budgets = text.split(',').map(Number);
  const good = budgets.every(
    (budget, place) => Number.isSafeInteger(budget) && budget > (budgets[place - 1] ?? 0),
  );
  return good ? budgets : undefined;
}
