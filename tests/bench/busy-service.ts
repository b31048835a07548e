import type { Service, ServiceTask, Way } from '@halfshaft/bayplan';
import { bayOfCars, CORNERS, SKILLS } from './bay-of-cars';

/**
 * An invented service in seconds, the same each time: so many tasks, shared among cars whose 20-minute services begin five
 * minutes apart, and so many people. A third must be done. Each car goes up on stands and down again; some tasks need
 * stands, some its wheels on the ground, two a cold engine, and one has fuel open.
 */
export function busyService({
  tasks,
  cars,
  people,
}: {
  tasks: number;
  cars: number;
  people: number;
}): Service {
  const carIds = Array.from({ length: cars }, (_, car) => `car ${car + 1}`);
  return {
    cars: carIds.map((id, car) => ({
      id,
      inTime: 300 * car,
      outTime: 300 * car + 1200,
      latest: 300 * car + 2100,
      hotUntil: 300 * car + 240,
    })),
    people: Array.from({ length: people }, (_, person) => ({
      id: `person ${person + 1}`,
      skills: SKILLS.filter((_skill, skill) => (person + skill) % 2 === 0),
      hours: [{ from: 0, until: 7200 }],
    })),
    ...bayOfCars(carIds),
    tasks: carIds.flatMap((car, number) => [
      task(`${car} up`, car, 45, { crew: [{ count: 2 }] }),
      ...Array.from({ length: tasks / cars - 2 }, (_, place) => work(car, number, place)),
      task(`${car} down`, car, 45, { crew: [{ count: 2 }] }),
    ]),
  };
}

function task(
  id: string,
  car: string,
  seconds: number,
  how: Partial<Way>,
  more: Partial<ServiceTask> = {},
): ServiceTask {
  const duration = { low: 0.8 * seconds, likely: seconds, high: 1.6 * seconds };
  return { id, car, ways: [{ id: 'usual', duration, crew: [{ count: 1 }], ...how }], ...more };
}

/** Steps without a common measure, so that the tasks differ. */
function work(car: string, number: number, place: number): ServiceTask {
  const mix = 7 * place + 3 * number;
  const skill = mix % 3 === 0 ? SKILLS[mix % SKILLS.length] : undefined;
  const onStands = mix % 4 === 1;
  return task(
    `${car} task ${place + 1}`,
    car,
    60 + ((mix * 37) % 150),
    {
      crew: [skill === undefined ? { count: 1 } : { skill, count: 1 }],
      place: `${car} ${CORNERS[mix % CORNERS.length]}`,
      tools:
        mix % 5 === 0 ? ['torque wrench'] : mix % 7 === 2 ? ['bleeder'] : mix % 6 === 3 ? ['wheel gun'] : [],
      value: 1 + (mix % 9),
    },
    {
      mandatory: place % 3 === 0,
      after: place % 4 === 3 ? [{ task: `${car} task ${place}` }] : [],
      open: onStands ? [`${car} stands`] : [],
      closed: mix % 11 === 4 && !onStands ? [`${car} stands`] : [],
      cold: mix % 13 === 5,
      fuelOpen: place === 20,
    },
  );
}
