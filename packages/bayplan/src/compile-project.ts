import { at } from './at';
import { findProjectFault } from './find-project-fault';
import type { Activity, Project } from './model';
import { orderByPrecedence } from './order-by-precedence';

/** Who waits for whom: `others` and `lags` from `first[job]` to before `first[job + 1]` are the neighbours of `job`. */
export interface Links {
  first: Int32Array;
  others: Int32Array;
  lags: Int32Array;
}

/**
 * A project as the hot loops want it. A *job* is an activity's place in an order in which everything comes after what it
 * waits for; when the project's own order is such an order, jobs are the activities' numbers.
 */
export interface CompiledProject {
  size: number;
  resources: number;
  durations: Int32Array;
  /** Amounts, job by job: `needs[job * resources + resource]`; all 0 for a milestone. */
  needs: Int32Array;
  capacities: Int32Array;
  before: Links;
  behind: Links;
  /** The number in `project.activities` of each job. */
  numberOf: Int32Array;
}

/**
 * @throws RangeError with the sentence of {@link findProjectFault}
 */
export function compileProject(project: Project): CompiledProject {
  const fault = findProjectFault(project);
  if (fault) throw new RangeError(`compileProject: ${fault.sentence}`);
  const order = orderByPrecedence(project.activities);
  const activities = order.flatMap((number) => project.activities[number] ?? []);
  const jobOf = new Map(activities.map(({ id }, job) => [id, job]));
  const arrows = activities.flatMap(({ after }, job) =>
    after.map(({ activity, lag = 0 }) => ({ from: jobOf.get(activity) ?? 0, to: job, lag })),
  );
  return {
    size: activities.length,
    resources: project.resources.length,
    durations: Int32Array.from(activities, ({ duration }) => duration),
    needs: needsOf(project, activities),
    capacities: Int32Array.from(project.resources, ({ capacity }) => capacity),
    before: linksOf(
      activities.length,
      arrows.map(({ from, to, lag }) => ({ job: to, other: from, lag })),
    ),
    behind: linksOf(
      activities.length,
      arrows.map(({ from, to, lag }) => ({ job: from, other: to, lag })),
    ),
    numberOf: Int32Array.from(order),
  };
}

/**
 * The same project with time running backwards: what came after comes before, and job `job` becomes job
 * `size − 1 − job`, so that here too everything comes after what it waits for.
 */
export function mirrorProject(project: CompiledProject): CompiledProject {
  const { size, resources, needs } = project;
  const mirrored = new Int32Array(needs.length);
  for (let job = 0; job < size; job += 1) {
    mirrored.set(needs.subarray(job * resources, (job + 1) * resources), (size - 1 - job) * resources);
  }
  return {
    ...project,
    durations: project.durations.toReversed(),
    needs: mirrored,
    before: mirrorLinks(project.behind, size),
    behind: mirrorLinks(project.before, size),
    numberOf: project.numberOf.toReversed(),
  };
}

function mirrorLinks({ first, others, lags }: Links, size: number): Links {
  const arrows: Arrow[] = [];
  for (let job = 0; job < size; job += 1) {
    for (let link = at(first, job); link < at(first, job + 1); link += 1) {
      arrows.push({ job: size - 1 - job, other: size - 1 - at(others, link), lag: at(lags, link) });
    }
  }
  return linksOf(size, arrows);
}

interface Arrow {
  job: number;
  other: number;
  lag: number;
}

function needsOf({ resources }: Project, activities: readonly Activity[]): Int32Array {
  const columns = new Map(resources.map(({ id }, column) => [id, column]));
  const table = new Int32Array(activities.length * resources.length);
  activities.forEach(({ duration, needs }, job) => {
    if (duration === 0) return;
    for (const { resource, amount } of needs) {
      const cell = job * resources.length + (columns.get(resource) ?? 0);
      table[cell] = at(table, cell) + amount;
    }
  });
  return table;
}

function linksOf(size: number, arrows: readonly Arrow[]): Links {
  const sorted = arrows.toSorted((one, two) => one.job - two.job || one.other - two.other);
  const first = new Int32Array(size + 1);
  for (const { job } of sorted) first[job + 1] = at(first, job + 1) + 1;
  for (let job = 0; job < size; job += 1) first[job + 1] = at(first, job + 1) + at(first, job);
  return {
    first,
    others: Int32Array.from(sorted, ({ other }) => other),
    lags: Int32Array.from(sorted, ({ lag }) => lag),
  };
}
