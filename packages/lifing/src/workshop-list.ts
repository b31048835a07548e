import type { CarPlace } from './job-card';

/** What is opened, taken off or raised once, for everything that is done behind it. */
export type WorkshopAccess =
  | 'wheelsOff'
  | 'underneath'
  | 'engineBay'
  | 'cockpit'
  | 'boot'
  | 'body'
  | 'anywhere';

/** In the order a workshop goes: while the car is up, then what is opened, then what needs nothing (common practice, no source). */
const ACCESS_ORDER: readonly (readonly [WorkshopAccess, readonly CarPlace[]])[] = [
  ['wheelsOff', ['allCorners', 'frontLeft', 'frontRight', 'rearLeft', 'rearRight']],
  ['underneath', ['underCar']],
  ['engineBay', ['engineBay']],
  ['cockpit', ['cockpit']],
  ['boot', ['boot']],
  ['body', ['body']],
];

export interface WorkshopGroup<Job> {
  access: WorkshopAccess;
  /** By place, and at one place in the order given. */
  jobs: Job[];
}

/**
 * The workshop's jobs by access, so that what has to be opened is opened once. A place that is none of the car plan, such
 * as words somebody typed, needs no known access and stands last.
 *
 * @example
 * workshopList([{ place: 'boot' }, { place: 'frontLeft' }]).map(({ access }) => access) // ['wheelsOff', 'boot']
 */
export function workshopList<Job extends { place: string }>(jobs: readonly Job[]): WorkshopGroup<Job>[] {
  const known = ACCESS_ORDER.map(([access, places]): WorkshopGroup<Job> => {
    return { access, jobs: places.flatMap((place) => jobs.filter((job) => job.place === place)) };
  });
  const placed = new Set(known.flatMap((group) => group.jobs));
  const anywhere = { access: 'anywhere' as const, jobs: jobs.filter((job) => !placed.has(job)) };
  return [...known, anywhere].filter((group) => group.jobs.length > 0);
}
