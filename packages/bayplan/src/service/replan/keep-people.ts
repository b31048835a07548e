import type { BayPlan, PlannedWork } from '../bay-plan';
import type { DoneTask } from '../check-bay-plan';
import { findAssignmentFaults } from '../check-people';
import type { Service } from '../service-model';

/**
 * The work of a plan at its times, with people put back where they were in an older plan as far as that breaks no rule: one
 * seat at a time, or two people changing places from some moment on.
 */
export function keepPeople(fromNow: Service, old: BayPlan, { work }: BayPlan): readonly PlannedWork[] {
  const before = new Map(old.work.map((one) => [one.task, one]));
  const tasks = new Map(fromNow.tasks.map((task) => [task.id, task]));
  const isFree = ({ task }: PlannedWork) => tasks.get(task)?.underWay === undefined;
  let best = work;
  let moves = countMoves(before, best, isFree);
  const accept = (tried: readonly PlannedWork[]) => {
    const fewer = countMoves(before, tried, isFree);
    if (fewer >= moves || !canBe(fromNow, tasks, tried)) return false;
    best = tried;
    moves = fewer;
    return true;
  };
  for (const { task, start } of work) {
    const now = best.find((one) => one.task === task);
    if (!now || !isFree(now)) continue;
    for (const [person, wanted] of swapsFor(now, before.get(task))) {
      const alone = best.map((one) => (one.task === task ? withPerson(one, person, wanted) : one));
      if (accept(alone)) continue;
      accept(best.map((one) => (one.start >= start && isFree(one) ? exchange(one, person, wanted) : one)));
    }
  }
  return best;
}

/** Who sits there now, and who did. */
function swapsFor(now: PlannedWork, before: PlannedWork | undefined): [string, string][] {
  const names = (work: PlannedWork) => work.people.map(({ person }) => person);
  const gone = before ? names(before).filter((person) => !names(now).includes(person)) : [];
  const come = before ? names(now).filter((person) => !names(before).includes(person)) : [];
  return come.flatMap((person) => gone.map((wanted): [string, string] => [person, wanted]));
}

function withPerson(work: PlannedWork, person: string, wanted: string): PlannedWork {
  const people = work.people.map((one) => (one.person === person ? { ...one, person: wanted } : one));
  return { ...work, people };
}

function exchange(work: PlannedWork, one: string, other: string): PlannedWork {
  const swap = (person: string) => (person === one ? other : person === other ? one : person);
  return { ...work, people: work.people.map((seat) => ({ ...seat, person: swap(seat.person) })) };
}

function countMoves(
  before: ReadonlyMap<string, PlannedWork>,
  work: readonly PlannedWork[],
  isFree: (one: PlannedWork) => boolean,
): number {
  return work.reduce((sum, one) => {
    const old = before.get(one.task);
    if (!old || !isFree(one)) return sum;
    return sum + one.people.filter(({ person }) => !old.people.some((seat) => seat.person === person)).length;
  }, 0);
}

function canBe(
  fromNow: Service,
  tasks: ReadonlyMap<string, Service['tasks'][number]>,
  work: readonly PlannedWork[],
): boolean {
  const done = work.flatMap((one): DoneTask[] => {
    const task = tasks.get(one.task);
    return task ? [{ task, work: one }] : [];
  });
  const pinned = done.every(({ task, work: one }) =>
    (task.pin?.people ?? []).every((person) => one.people.some((seat) => seat.person === person)),
  );
  return pinned && findAssignmentFaults(fromNow, done).length === 0;
}
