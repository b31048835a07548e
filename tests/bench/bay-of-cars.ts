import type { Service } from '@halfshaft/bayplan';

export const CORNERS = ['front left', 'front right', 'rear left', 'rear right'];
export const SKILLS = ['engine', 'brakes', 'electrics'];

/** Where cars stand side by side: room at each corner, one wrench and one bleeder for all, and stands for each. */
export function bayOfCars(carIds: readonly string[]): Pick<Service, 'places' | 'tools' | 'accesses'> {
  return {
    places: carIds.flatMap((car) => CORNERS.map((corner) => ({ id: `${car} ${corner}`, room: 2 }))),
    tools: [
      { id: 'torque wrench', count: 1 },
      { id: 'bleeder', count: 1 },
      { id: 'wheel gun', count: 2 },
    ],
    accesses: carIds.map((car) => ({
      id: `${car} stands`,
      car,
      opening: `${car} up`,
      closing: `${car} down`,
    })),
  };
}
