import { at } from '../at';
import type { CompiledProject } from '../compile-project';

/** Earliest and latest times of each job if nothing were scarce. */
export interface CriticalTimes {
  length: number;
  earliestStart: Int32Array;
  /** With the length as the deadline. */
  latestFinish: Int32Array;
}

export function criticalTimes(project: CompiledProject): CriticalTimes {
  const { size, durations, before, behind } = project;
  const earliestStart = new Int32Array(size);
  let length = 0;
  for (let job = 0; job < size; job += 1) {
    let start = 0;
    for (let link = at(before.first, job); link < at(before.first, job + 1); link += 1) {
      const other = at(before.others, link);
      start = Math.max(start, at(earliestStart, other) + at(durations, other) + at(before.lags, link));
    }
    earliestStart[job] = start;
    length = Math.max(length, start + at(durations, job));
  }
  const latestFinish = new Int32Array(size);
  for (let job = size - 1; job >= 0; job -= 1) {
    let finish = length;
    for (let link = at(behind.first, job); link < at(behind.first, job + 1); link += 1) {
      const other = at(behind.others, link);
      finish = Math.min(finish, at(latestFinish, other) - at(durations, other) - at(behind.lags, link));
    }
    latestFinish[job] = finish;
  }
  return { length, earliestStart, latestFinish };
}
