import { at } from '../../at';
import type { CompiledService } from '../compile-service';
import { waitsOf } from './waits';

/**
 * By how much of time must still come after the start of each task, by what waits for what alone, and by when its car is
 * due: what is due sooner has the smaller value and goes first (latest start, as in `priorities`).
 */
export function servicePriorities(service: CompiledService): Float64Array {
  const size = service.tasks.length;
  const durations = service.tasks.map(({ ways }) => Math.min(...ways.map(({ duration }) => duration)));
  const tails = Float64Array.from(durations, (duration) => duration);
  const waits = waitsOf(service).filter(({ chooser, side }) => chooser < 0 || side === 1);
  // As often as the longest possible chain is long: a circle stops there too.
  for (let round = 0; round < size; round += 1) {
    for (const { from, to, lag } of waits) {
      tails[from] = Math.max(at(tails, from), (durations[from] ?? 0) + lag + at(tails, to));
    }
  }
  return Float64Array.from(service.tasks, ({ car, number }) => {
    return (service.cars[car]?.outTime ?? service.latest) - at(tails, number);
  });
}
