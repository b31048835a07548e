import type { Activity, Project, Schedule } from './model';

export interface ScheduleFault {
  kind: 'count' | 'notWhole' | 'tooEarly' | 'tooMuch' | 'makespan';
  sentence: string;
}

/**
 * Everything that is wrong with a schedule, judged from the project's own data alone: nothing that makes schedules is
 * used here, so that a fault there can't hide itself. An empty list means the schedule keeps every rule.
 *
 * @example
 * checkSchedule(project, { starts: [0, 2], makespan: 5 })
 * // [{ kind: 'tooEarly', sentence: 'wheels starts at 2, but may start at 4, after lift.' }]
 */
export function checkSchedule(project: Project, schedule: Schedule): ScheduleFault[] {
  const { activities } = project;
  const { starts } = schedule;
  if (starts.length !== activities.length) {
    const sentence = `There are ${starts.length} starts for ${activities.length} activities.`;
    return [{ kind: 'count', sentence }];
  }
  const started = new Map(activities.map((activity, number) => [activity.id, starts[number] ?? Number.NaN]));
  return [
    ...findFractions(started),
    ...findEarlyStarts(activities, started),
    ...findOverloads(project, started),
    ...findWrongMakespan(activities, started, schedule.makespan),
  ];
}

function findFractions(started: ReadonlyMap<string, number>): ScheduleFault[] {
  return [...started]
    .filter(([, start]) => !Number.isSafeInteger(start) || start < 0)
    .map(([id, start]) => ({
      kind: 'notWhole',
      sentence: `${id} starts at ${start}; it must be a whole number from 0.`,
    }));
}

function findEarlyStarts(
  activities: readonly Activity[],
  started: ReadonlyMap<string, number>,
): ScheduleFault[] {
  const durations = new Map(activities.map(({ id, duration }) => [id, duration]));
  return activities.flatMap(({ id, after }) =>
    after.flatMap(({ activity, lag = 0 }): ScheduleFault[] => {
      const allowed = valueIn(started, activity) + valueIn(durations, activity) + lag;
      const start = valueIn(started, id);
      if (start >= allowed) return [];
      const sentence = `${id} starts at ${start}, but may start at ${allowed}, after ${activity}.`;
      return [{ kind: 'tooEarly', sentence }];
    }),
  );
}

/** Use can only rise where something starts, so those moments are all that need looking at. */
function findOverloads(project: Project, started: ReadonlyMap<string, number>): ScheduleFault[] {
  const moments = [...new Set(started.values())].toSorted((one, two) => one - two);
  return project.resources.flatMap(({ id, capacity }) =>
    moments.flatMap((moment): ScheduleFault[] => {
      const used = usedAt(project.activities, started, id, moment);
      if (used <= capacity) return [];
      return [
        {
          kind: 'tooMuch',
          sentence: `At ${moment}, ${used} of ${id} is used, but there is only ${capacity}.`,
        },
      ];
    }),
  );
}

function usedAt(
  activities: readonly Activity[],
  started: ReadonlyMap<string, number>,
  resource: string,
  moment: number,
): number {
  let used = 0;
  for (const { id, duration, needs } of activities) {
    const start = valueIn(started, id);
    if (moment < start || moment >= start + duration) continue;
    for (const need of needs) if (need.resource === resource) used += need.amount;
  }
  return used;
}

function findWrongMakespan(
  activities: readonly Activity[],
  started: ReadonlyMap<string, number>,
  makespan: number,
): ScheduleFault[] {
  const end = Math.max(0, ...activities.map(({ id, duration }) => valueIn(started, id) + duration));
  if (end === makespan) return [];
  return [{ kind: 'makespan', sentence: `The last activity finishes at ${end}, not at ${makespan}.` }];
}

function valueIn(values: ReadonlyMap<string, number>, id: string): number {
  return values.get(id) ?? Number.NaN;
}
