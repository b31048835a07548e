import { at } from '../../at';
import type { CompiledService } from '../compile-service';
import { tiesOf } from '../generate/choose-work';
import { waitsOf } from '../generate/waits';

/** From when and until when each task can run, if it is done at all and its car leaves on time. */
export interface Room {
  earliest: Float64Array;
  latest: Float64Array;
}

/** By what waits for what, as far as one is done whenever the other is. */
export function roomOf(service: CompiledService): Room {
  const { tasks, cars } = service;
  const shortest = tasks.map(({ ways }) => Math.min(...ways.map(({ duration }) => duration)));
  const room: Room = {
    earliest: Float64Array.from(tasks, ({ earliest, start = earliest }) => start),
    latest: Float64Array.from(tasks, ({ car, underWay, start, number }) =>
      underWay ? (start ?? 0) + (shortest[number] ?? 0) : (cars[car]?.outTime ?? 0),
    ),
  };
  const { ends } = tiesOf(service);
  const comesWith = (one: number, other: number) =>
    tasks[one]?.must === true || ends.some(({ end, users }) => end === one && users.includes(other));
  const isOpen = (task: number) => tasks[task]?.underWay !== true;
  const waits = waitsOf(service).filter(({ chooser }) => chooser < 0);
  // Each round carries a bound one wait further; a circle stops there too.
  let isSettled = false;
  for (let round = 0; round < tasks.length && !isSettled; round += 1) {
    isSettled = true;
    for (const { from, to, lag } of waits) {
      const begins = at(room.earliest, from) + (shortest[from] ?? 0) + lag;
      const mustEnd = at(room.latest, to) - (shortest[to] ?? 0) - lag;
      if (begins > at(room.earliest, to) && isOpen(to) && comesWith(from, to)) {
        room.earliest[to] = begins;
        isSettled = false;
      }
      if (mustEnd < at(room.latest, from) && isOpen(from) && comesWith(to, from)) {
        room.latest[from] = mustEnd;
        isSettled = false;
      }
    }
  }
  return room;
}
