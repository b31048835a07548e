import type { BayPlanFault, DoneTask } from './check-bay-plan';
import type { Service, ServicePerson } from './service-model';

/** What is wrong with who does what: numbers, skills, hours, two tasks at once. Part of `checkBayPlan`. */
export function findAssignmentFaults(service: Service, done: readonly DoneTask[]): BayPlanFault[] {
  const people = new Map(service.people.map((person) => [person.id, person]));
  return [
    ...done.flatMap((one) => [...findCrewFaults(one, people), ...findHourFaults(one, people)]),
    ...service.people.flatMap(({ id }) => findOverlaps(id, done)),
  ];
}

function findCrewFaults(
  { task, work }: DoneTask,
  people: ReadonlyMap<string, ServicePerson>,
): BayPlanFault[] {
  const faults: BayPlanFault[] = [];
  const say = (sentence: string) => faults.push({ kind: 'crew', sentence });
  const names = work.people.map(({ person }) => person);
  if (new Set(names).size < names.length) say(`${task.id} has somebody twice.`);
  for (const { person, skill } of work.people) {
    const known = people.get(person);
    if (!known) say(`${task.id} is given to ${person}, who is not there.`);
    if (skill !== undefined && known && !known.skills.includes(skill)) {
      say(`${task.id} is given to ${person}, who lacks the skill ${skill}.`);
    }
  }
  if (task.underWay) return faults;
  const crew = task.ways.find(({ id }) => id === work.way)?.crew ?? [];
  for (const skill of new Set([...crew, ...work.people].map((one) => one.skill))) {
    let needed = 0;
    for (const one of crew) if (one.skill === skill) needed += one.count;
    const given = work.people.filter((one) => one.skill === skill).length;
    if (given !== needed) say(`${task.id} needs ${needed} for ${skill ?? 'anyone'} and is given ${given}.`);
  }
  return faults;
}

function findHourFaults(
  { task, work }: DoneTask,
  people: ReadonlyMap<string, ServicePerson>,
): BayPlanFault[] {
  if (task.underWay) return [];
  return work.people
    .filter(({ person }) => {
      const hours = people.get(person)?.hours ?? [];
      return !hours.some(({ from, until }) => from <= work.start && work.finish <= until);
    })
    .map(({ person }) => ({
      kind: 'hours',
      sentence: `${person} does ${task.id} from ${work.start} to ${work.finish}, but is not there all the time.`,
    }));
}

function findOverlaps(person: string, done: readonly DoneTask[]): BayPlanFault[] {
  const own = done
    .map(({ work }) => work)
    .filter(({ people }) => people.some((one) => one.person === person));
  return own.flatMap((one, place) =>
    own
      .slice(place + 1)
      .filter((other) => one.start < other.finish && other.start < one.finish)
      .map((other) => ({
        kind: 'personTwice',
        sentence: `${person} does ${one.task} from ${one.start} to ${one.finish} and ${other.task} from ${other.start} to ${other.finish}.`,
      })),
  );
}
