import type { Service, ServiceTask, Way } from '@halfshaft/bayplan';
import type { Chance } from '../faults/chance';
import { bayOfCars, CORNERS, SKILLS } from './bay-of-cars';

export interface ServiceSize {
  tasks: number;
  cars: number;
  people: number;
}

/**
 * An invented service by chance, in seconds: 20 minutes a car, the cars four to eight minutes apart, more work than fits. Each
 * car goes up on stands and down again. What a task takes, is worth, needs and waits for is drawn, and so is what each person
 * can do; one task in seven has a quicker way that is worth less, one in six takes two people.
 */
export function variedService({ tasks, cars, people }: ServiceSize, chance: Chance): Service {
  const carIds = Array.from({ length: cars }, (_, car) => `car ${car + 1}`);
  let inTime = 0;
  return {
    cars: carIds.map((id) => {
      const car = {
        id,
        inTime,
        outTime: inTime + 1200,
        latest: inTime + 2100,
        hotUntil: inTime + 60 * between(chance, 2, 6),
      };
      inTime += 60 * between(chance, 4, 8);
      return car;
    }),
    people: Array.from({ length: people }, (_, person) => ({
      id: `person ${person + 1}`,
      skills: SKILLS.filter((_skill, skill) => skill === person % SKILLS.length || isOneIn(chance, 3)),
      hours: [{ from: 0, until: 7200 }],
    })),
    ...bayOfCars(carIds),
    tasks: carIds.flatMap((car) => [
      end(`${car} up`, car),
      ...Array.from({ length: Math.round(tasks / cars) - 2 }, (_, place) => work(car, place, chance)),
      end(`${car} down`, car),
    ]),
  };
}

function end(id: string, car: string): ServiceTask {
  return { id, car, ways: [{ id: 'usual', duration: lasting(45), crew: [{ count: 2 }] }] };
}

function work(car: string, place: number, chance: Chance): ServiceTask {
  const seconds = 5 * between(chance, 8, 48);
  const count = isOneIn(chance, 6) ? 2 : 1;
  const skill = isOneIn(chance, 3) ? SKILLS[chance.whole(SKILLS.length)] : undefined;
  const value = between(chance, 1, 20);
  const usual: Way = {
    id: 'usual',
    duration: lasting(seconds),
    crew: [skill === undefined ? { count } : { skill, count: 1 }],
    ...(isOneIn(chance, 2) ? { place: `${car} ${CORNERS[chance.whole(CORNERS.length)]}` } : {}),
    tools: toolsBy(chance.whole(12)),
    value,
  };
  const quick: Way = {
    ...usual,
    id: 'quick',
    duration: lasting(Math.ceil(seconds / 2)),
    value: Math.floor(value / 2),
  };
  const isMandatory = isOneIn(chance, 4);
  const state = chance.whole(10);
  return {
    id: `${car} task ${place + 1}`,
    car,
    mandatory: isMandatory,
    ways: isOneIn(chance, 7) ? [usual, quick] : [usual],
    after:
      place > 2 && isOneIn(chance, 4) ? [{ task: `${car} task ${between(chance, place - 2, place)}` }] : [],
    open: state < 3 ? [`${car} stands`] : [],
    closed: state === 3 ? [`${car} stands`] : [],
    cold: isOneIn(chance, 12),
    fuelOpen: place === 7 && isMandatory,
  };
}

function lasting(seconds: number): Way['duration'] {
  return { low: 0.8 * seconds, likely: seconds, high: 1.6 * seconds };
}

function toolsBy(dice: number): string[] {
  return dice < 2 ? ['torque wrench'] : dice === 2 ? ['bleeder'] : dice === 3 ? ['wheel gun'] : [];
}

function between(chance: Chance, least: number, most: number): number {
  return least + chance.whole(most - least + 1);
}

function isOneIn(chance: Chance, number: number): boolean {
  return chance.whole(number) === 0;
}
