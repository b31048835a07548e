import fc from 'fast-check';
import type { Activity, Project } from './model';

/** Any project of up to so many activities: scarce or plenty, with lags, milestones, and numbers out of order. */
export function anyProject({ most = 14 }: { most?: number } = {}): fc.Arbitrary<Project> {
  const resources = fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 1, maxLength: 3 });
  return fc
    .tuple(resources, fc.integer({ min: 1, max: most }))
    .chain(([capacities, size]) =>
      fc.record({
        capacities: fc.constant(capacities),
        rows: fc.tuple(...Array.from({ length: size }, (_, number) => anyRow(capacities, number))),
        backwards: fc.boolean(),
      }),
    )
    .map(({ capacities, rows, backwards }) => {
      const activities = rows.map((row, number): Activity => ({ id: `a${number}`, ...row }));
      return {
        resources: capacities.map((capacity, column) => ({ id: `r${column}`, capacity })),
        activities: backwards ? activities.toReversed() : activities,
      };
    });
}

function anyRow(capacities: readonly number[], number: number): fc.Arbitrary<Omit<Activity, 'id'>> {
  const link = fc.record({
    activity: fc.nat(Math.max(0, number - 1)).map((other) => `a${other}`),
    lag: fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, fc.nat(4)),
  });
  return fc.record({
    duration: fc.nat(7),
    needs: fc
      .tuple(...capacities.map((capacity) => fc.nat(capacity)))
      .map((amounts) => amounts.map((amount, column) => ({ resource: `r${column}`, amount }))),
    after: number === 0 ? fc.constant([]) : fc.array(link, { maxLength: 2 }),
  });
}

/** The earliest that everything `activity` waits for lets it start. */
export function allowedStart(
  project: Project,
  starts: ReadonlyMap<string, number>,
  activity: Activity,
): number {
  const durations = new Map(project.activities.map(({ id, duration }) => [id, duration]));
  return Math.max(
    0,
    ...activity.after.map(
      ({ activity: other, lag = 0 }) => (starts.get(other) ?? 0) + (durations.get(other) ?? 0) + lag,
    ),
  );
}

/** Whether an activity fits beside all those that `starts` names, unit of time by unit of time. */
export function fits(
  project: Project,
  starts: ReadonlyMap<string, number>,
  activity: Activity,
  start: number,
): boolean {
  for (let now = start; now < start + activity.duration; now += 1) {
    for (const { id, capacity } of project.resources) {
      let used = 0;
      for (const other of project.activities) {
        const from = other.id === activity.id ? start : starts.get(other.id);
        if (from === undefined || now < from || now >= from + other.duration) continue;
        for (const need of other.needs) if (need.resource === id) used += need.amount;
      }
      if (used > capacity) return false;
    }
  }
  return true;
}

/**
 * The shortest makespan by trying every order in which the activities can be taken, each at its earliest fitting time:
 * every active schedule is among them, and so is a shortest one.
 */
export function shortestByTryingAll(project: Project): number {
  let shortest = Number.POSITIVE_INFINITY;
  const place = (starts: Map<string, number>, makespan: number): void => {
    if (makespan >= shortest) return;
    if (starts.size === project.activities.length) {
      shortest = makespan;
      return;
    }
    for (const activity of project.activities) {
      if (starts.has(activity.id) || activity.after.some((link) => !starts.has(link.activity))) continue;
      let start = allowedStart(project, starts, activity);
      while (!fits(project, starts, activity, start)) start += 1;
      place(new Map([...starts, [activity.id, start]]), Math.max(makespan, start + activity.duration));
    }
  };
  place(new Map(), 0);
  return shortest;
}
