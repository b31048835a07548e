import type { Activity, Project } from './model';
import { orderByPrecedence } from './order-by-precedence';

export interface ProjectFault {
  kind: 'repeatedId' | 'notWhole' | 'unknownResource' | 'unknownActivity' | 'needsTooMuch' | 'circle';
  /** The activity or resource it is about. */
  id: string;
  sentence: string;
}

/**
 * Why no schedule of this project can exist, or nothing when one does: with every need within its capacity and no circle
 * of waiting, doing one activity after the other always works.
 *
 * @example
 * findProjectFault({ resources: [{ id: 'jack', capacity: 1 }], activities: [lift] })
 * // { kind: 'needsTooMuch', id: 'lift', sentence: 'lift needs 2 of jack, but there is only 1.' }
 */
export function findProjectFault(project: Project): ProjectFault | undefined {
  const capacities = new Map(project.resources.map(({ id, capacity }) => [id, capacity]));
  const ids = new Set(project.activities.map(({ id }) => id));
  return (
    findRepeatedId(project) ??
    findFirst(project.resources, ({ id, capacity }) => refuseFraction(id, 'capacity', capacity)) ??
    findFirst(project.activities, (activity) => findActivityFault(activity, capacities, ids)) ??
    findCircle(project)
  );
}

function findFirst<Thing>(
  things: readonly Thing[],
  faultOf: (thing: Thing) => ProjectFault | undefined,
): ProjectFault | undefined {
  for (const thing of things) {
    const fault = faultOf(thing);
    if (fault) return fault;
  }
  return undefined;
}

function findRepeatedId({ resources, activities }: Project): ProjectFault | undefined {
  for (const things of [resources, activities]) {
    const seen = new Set<string>();
    for (const { id } of things) {
      if (seen.has(id)) return { kind: 'repeatedId', id, sentence: `${id} is there twice.` };
      seen.add(id);
    }
  }
  return undefined;
}

function findActivityFault(
  { id, duration, needs, after }: Activity,
  capacities: ReadonlyMap<string, number>,
  ids: ReadonlySet<string>,
): ProjectFault | undefined {
  const fraction = refuseFraction(id, 'duration', duration);
  if (fraction) return fraction;
  const totals = new Map<string, number>();
  for (const { resource, amount } of needs) {
    const capacity = capacities.get(resource);
    if (capacity === undefined) {
      return { kind: 'unknownResource', id, sentence: `${id} needs ${resource}, which is not a resource.` };
    }
    const broken = refuseFraction(id, `need of ${resource}`, amount);
    if (broken) return broken;
    const total = (totals.get(resource) ?? 0) + amount;
    totals.set(resource, total);
    if (duration > 0 && total > capacity) {
      const sentence = `${id} needs ${total} of ${resource}, but there is only ${capacity}.`;
      return { kind: 'needsTooMuch', id, sentence };
    }
  }
  return findFirst(after, ({ activity, lag = 0 }) =>
    ids.has(activity)
      ? refuseFraction(id, `lag after ${activity}`, lag)
      : { kind: 'unknownActivity', id, sentence: `${id} waits for ${activity}, which is not an activity.` },
  );
}

function refuseFraction(id: string, what: string, value: number): ProjectFault | undefined {
  if (Number.isSafeInteger(value) && value >= 0) return undefined;
  const sentence = `The ${what} of ${id} is ${value}; it must be a whole number from 0.`;
  return { kind: 'notWhole', id, sentence };
}

function findCircle({ activities }: Project): ProjectFault | undefined {
  const ordered = new Set(orderByPrecedence(activities));
  const caught = activities.find((_, number) => !ordered.has(number));
  if (!caught) return undefined;
  const sentence = `${caught.id} waits, directly or through others, for itself or for activities that wait in a circle.`;
  return { kind: 'circle', id: caught.id, sentence };
}
