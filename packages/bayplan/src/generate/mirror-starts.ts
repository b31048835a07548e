import { at } from '../at';
import type { CompiledProject } from '../compile-project';

/** The starts of the same schedule seen with time running backwards from its end, for the mirrored project. */
export function mirrorStarts(
  { size, durations }: CompiledProject,
  starts: Int32Array,
  makespan: number,
  mirrored: Int32Array,
): void {
  for (let job = 0; job < size; job += 1) {
    mirrored[size - 1 - job] = makespan - at(starts, job) - at(durations, job);
  }
}
