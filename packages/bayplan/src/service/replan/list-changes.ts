import type { BayPlan, PlannedWork } from '../bay-plan';
import type { Service } from '../service-model';

/** What somebody would have to do otherwise than planned. */
export type Change =
  | { kind: 'left'; task: string }
  | { kind: 'taken'; task: string; people: readonly string[] }
  | { kind: 'people'; task: string; instead: readonly string[]; people: readonly string[] }
  | { kind: 'way'; task: string; way: string }
  | { kind: 'order'; task: string; before: string; person: string };

/** What is begun is no change, and neither is a later start. In the order of the service's tasks. */
export function listChanges({ tasks }: Service, old: BayPlan, plan: BayPlan): Change[] {
  const before = new Map(old.work.map((one) => [one.task, one]));
  const now = new Map(plan.work.map((one) => [one.task, one]));
  return tasks.flatMap(({ id, underWay }): Change[] => {
    if (underWay) return [];
    const one = before.get(id);
    const other = now.get(id);
    if (!one) return other ? [{ kind: 'taken', task: id, people: namesOf(other) }] : [];
    if (!other) return [{ kind: 'left', task: id }];
    return changesOf(one, other, [...before.values()], now, new Set(begunOf(tasks)));
  });
}

function begunOf(tasks: Service['tasks']): string[] {
  return tasks.filter(({ underWay }) => underWay).map(({ id }) => id);
}

function changesOf(
  one: PlannedWork,
  other: PlannedWork,
  before: readonly PlannedWork[],
  now: ReadonlyMap<string, PlannedWork>,
  begun: ReadonlySet<string>,
): Change[] {
  const changes: Change[] = [];
  if (one.way !== other.way) changes.push({ kind: 'way', task: one.task, way: other.way });
  const instead = namesOf(one).filter((person) => !namesOf(other).includes(person));
  const people = namesOf(other).filter((person) => !namesOf(one).includes(person));
  if (instead.length + people.length > 0) changes.push({ kind: 'people', task: one.task, instead, people });
  const overtaken = before.find((earlier) => {
    const later = now.get(earlier.task);
    if (!later || begun.has(earlier.task) || earlier.finish > one.start) return false;
    return later.start >= other.finish && sharedBy([one, other, earlier, later]) !== undefined;
  });
  const later = overtaken && now.get(overtaken.task);
  const person = overtaken && later && sharedBy([one, other, overtaken, later]);
  if (overtaken && person !== undefined)
    changes.push({ kind: 'order', task: one.task, before: overtaken.task, person });
  return changes;
}

function sharedBy(work: readonly PlannedWork[]): string | undefined {
  const [first, ...rest] = work.map(namesOf);
  return first?.find((person) => rest.every((people) => people.includes(person)));
}

function namesOf({ people }: PlannedWork): string[] {
  return people.map(({ person }) => person);
}
