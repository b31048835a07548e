import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileService } from '../compile-service';
import { anyService } from '../fixtures';
import { bestByProgram } from '../program/fixtures';
import type { Service, ServiceTask } from '../service-model';
import { boundValue } from './bound-value';

const boundOf = (service: Service) => boundValue(compileService(service));

/** One car from 0 to 10, one person: a knapsack that holds 10. */
function knapsack(...pieces: [duration: number, value: number, more?: Partial<ServiceTask>][]): Service {
  return {
    cars: [{ id: 'car', inTime: 0, outTime: 10 }],
    people: [{ id: 'Ada', skills: [], hours: [{ from: 0, until: 30 }] }],
    places: [],
    tools: [],
    accesses: [],
    tasks: pieces.map(([duration, value, more], place) => ({
      id: `task${place}`,
      car: 'car',
      ways: [
        {
          id: 'way',
          value,
          crew: [{ count: 1 }],
          duration: { low: duration, likely: duration, high: duration },
        },
      ],
      ...more,
    })),
  };
}

describe('boundValue', () => {
  it('is all there is where nothing is scarce', () => {
    expect(boundOf(knapsack([3, 4], [7, 5]))).toBe(9);
  });

  it('is the fractional knapsack where people are scarce, cut to a whole value', () => {
    // 6 for the first, 4 of the second's 8 moments, worth 3 of its 6 (Dantzig 1957).
    expect(boundOf(knapsack([6, 6], [8, 6]))).toBe(9);
    expect(boundOf(knapsack([6, 6], [8, 6], [2, 6]))).toBe(13);
  });

  it('takes what must be done out of the time first', () => {
    expect(boundOf(knapsack([6, 0, { mandatory: true }], [8, 6], [4, 3]))).toBe(3);
  });

  it('takes everyone at the car for open fuel', () => {
    const service = knapsack([4, 4], [4, 3], [4, 2], [4, 1, { fuelOpen: true }]);
    const people = [...service.people, { id: 'Ben', skills: [], hours: [{ from: 0, until: 30 }] }];
    // 20 moments of two people, of which 12 are for the first three; the fuel would take 8 and fits.
    expect(boundOf({ ...service, people })).toBe(10);
    const cars = service.cars.map((car) => ({ ...car, outTime: 8 }));
    // 4 moments are left of 16, half of what the fuel takes.
    expect(boundOf({ ...service, people, cars })).toBe(9);
  });

  it('takes what opens and closes something for what must be done out of the time too', () => {
    const stands = { id: 'stands', car: 'car', opening: 'task0', closing: 'task1' };
    const service = knapsack([2, 0], [2, 0], [2, 1, { mandatory: true, open: ['stands'] }], [8, 6]);
    // Of 10 moments 6 are gone, half of 8 is left.
    expect(boundOf({ ...service, accesses: [stands] })).toBe(1 + 3);
  });

  it('looks at what is left between a late beginning and the out-time', () => {
    expect(boundOf(knapsack([4, 5, { notBefore: 5 }], [4, 5, { notBefore: 5 }]))).toBe(6);
  });

  it('counts whoever has begun something as there until it is done, also outside their hours', () => {
    const service = knapsack([2, 0, { mandatory: true }], [2, 5]);
    const [begun] = service.tasks;
    const people = service.people.map((person) => ({ ...person, hours: [{ from: 1, until: 30 }] }));
    const underWay = { since: 0, until: 2, way: 'way', people: people.map(({ id }) => id) };
    const tasks = service.tasks.map((task) => (task === begun ? { ...task, underWay } : task));
    const cars = service.cars.map((car) => ({ ...car, inTime: 0, outTime: 4, latest: 4 }));
    expect(boundOf({ ...service, people, tasks, cars })).toBe(5);
  });

  it('takes the time of whoever does something begun from all who can do what they can', () => {
    const service = knapsack([6, 0, { mandatory: true }], [4, 5], [4, 5]);
    const underWay = { since: 0, until: 6, way: 'way', people: ['Ada'] };
    const crew = [{ skill: 'brakes', count: 1 }];
    const tasks = service.tasks.map((task, place) =>
      place === 0 ? { ...task, underWay } : { ...task, ways: task.ways.map((way) => ({ ...way, crew })) },
    );
    const people = [
      { id: 'Ada', skills: ['brakes'], hours: [{ from: 0, until: 30 }] },
      { id: 'Ben', skills: [], hours: [{ from: 0, until: 30 }] },
    ];
    // 4 of Ada's moments are left for 8, worth 10.
    expect(boundOf({ ...service, people, tasks })).toBe(5);
  });

  it('is never below the best plan of a team that leaves on time, as an integer program has it', async () => {
    let compared = 0;
    await fc.assert(
      fc.asyncProperty(anyService({ most: 6 }), async (service) => {
        const best = await bestByProgram(service);
        if (best?.late !== 0) return;
        compared += 1;
        expect(boundOf(service)).toBeGreaterThanOrEqual(best.value);
      }),
      { numRuns: 80 },
    );
    expect(compared).toBeGreaterThan(10);
  });
});
