import { at } from '../../at';
import type { CompiledService, CompiledTask, CompiledWay } from '../compile-service';
import type { Stretch } from '../service-model';
import { listSupplies } from './list-supplies';
import { type Room, roomOf } from './room-of';

/** Something of which there may be too little in a stretch of time. */
export interface Scarce {
  /** So much of it there is: how much at a time, times how long. */
  capacity: number;
  /** How much of it each way of each task takes at least, wherever the task is put. */
  uses: readonly Float64Array[];
}

/** Of each supply; further ones say little more and cost as much. */
const MOST_STRETCHES = 3;

/**
 * What may run short while the cars leave on time: people, those who have some skill, tools and places, over each stretch of
 * time from where something may begin to where something must be finished (energetic reasoning: Baptiste, Le Pape &
 * Nuijten 2001, Constraint-Based Scheduling, chapter 3). What all tasks together can't use up is left out.
 */
export function listScarce(service: CompiledService): Scarce[] {
  const room = roomOf(service);
  const stretches = stretchesOf(room);
  return listSupplies(service).flatMap(({ amountIn, amountFor }) => {
    const amounts = service.tasks.map((task) => task.ways.map((way) => amountFor(way, task)));
    const useIn = (stretch: Stretch) => (task: CompiledTask, way: CompiledWay, place: number) =>
      (amounts[task.number]?.[place] ?? 0) * leastInside(task, way, room, stretch);
    return stretches
      .map((stretch) => ({ stretch, missing: mostUsed(service, useIn(stretch)) - amountIn(stretch) }))
      .filter(({ missing }) => missing > 0)
      .toSorted((one, other) => other.missing - one.missing)
      .slice(0, MOST_STRETCHES)
      .map(({ stretch }) => ({
        capacity: amountIn(stretch),
        uses: service.tasks.map((task) =>
          Float64Array.from(task.ways, (way, place) => useIn(stretch)(task, way, place)),
        ),
      }));
  });
}

/** If all is done that there is. */
function mostUsed(
  { tasks }: CompiledService,
  useOf: (task: CompiledTask, way: CompiledWay, place: number) => number,
): number {
  let sum = 0;
  for (const task of tasks) {
    let most = 0;
    for (const [place, way] of task.ways.entries()) most = Math.max(most, useOf(task, way, place));
    sum += most;
  }
  return sum;
}

function stretchesOf({ earliest, latest }: Room): Stretch[] {
  const ends = [...new Set(latest)];
  return [...new Set(earliest)].flatMap((from) =>
    ends.filter((until) => until > from).map((until) => ({ from, until })),
  );
}

/** As far outside the stretch as it can be, on either side. */
function leastInside(
  { number }: CompiledTask,
  { duration }: CompiledWay,
  { earliest, latest }: Room,
  { from, until }: Stretch,
): number {
  const early = at(earliest, number) + duration - from;
  const late = until - (at(latest, number) - duration);
  return Math.max(0, Math.min(early, late, duration, until - from));
}
