import type { BayPlan, PlannedWork } from '../bay-plan';
import type { Service, ServiceTask, Way } from '../service-model';

/** A task that a plan does, with all that belongs to it. */
export interface Done {
  task: ServiceTask;
  way: Way | undefined;
  work: PlannedWork;
}

/** What a plan does, in the order of the plan. */
export function listDone({ tasks }: Service, { work: all }: BayPlan): Done[] {
  return all.flatMap((work): Done[] => {
    const task = tasks.find(({ id }) => id === work.task);
    return task ? [{ task, work, way: task.ways.find(({ id }) => id === work.way) }] : [];
  });
}

/**
 * How much later than the finish of one the other, which a plan starts no earlier than that, starts at least if the plan's
 * order is kept; nothing when they have nothing to do with each other. Two tasks have to do with each other where one waits
 * for the other or opens or closes something for it, where they share somebody, a tool or a place, or where either has fuel
 * open.
 *
 * Keeping that order keeps every tool and place from being taken too often, whatever the tasks then take: tasks that it
 * leaves free to overlap overlap two by two in the plan, and stretches of time that do so have a moment in common.
 */
export function lagBetween(service: Service, one: Done, other: Done): number | undefined {
  const link = other.task.after?.find(({ task }) => task === one.task.id);
  if (link) return link.lag ?? 0;
  const people = new Set(one.work.people.map(({ person }) => person));
  const sameCar = one.task.car === other.task.car;
  const shares =
    other.work.people.some(({ person }) => people.has(person)) ||
    (one.way?.tools ?? []).some((tool) => other.way?.tools?.includes(tool)) ||
    (one.way?.place !== undefined && one.way.place === other.way?.place) ||
    (sameCar && (one.task.fuelOpen || other.task.fuelOpen)) ||
    (sameCar && tiedByAccess(service, one.task, other.task));
  return shares ? 0 : undefined;
}

function tiedByAccess({ accesses }: Service, one: ServiceTask, other: ServiceTask): boolean {
  return accesses.some(({ id, opening, closing }) => {
    const isEnd = (task: ServiceTask) => task.id === opening || task.id === closing;
    const needs = (task: ServiceTask) => task.open?.includes(id) || task.closed?.includes(id) || isEnd(task);
    return (isEnd(one) && needs(other)) || (isEnd(other) && needs(one));
  });
}
