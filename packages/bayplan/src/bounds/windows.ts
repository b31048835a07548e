import { at } from '../at';
import type { CompiledProject } from '../compile-project';

/** Between when and when each job must run if a deadline is to be kept. */
export interface Windows {
  earliestStart: Int32Array;
  latestFinish: Int32Array;
}

/**
 * Narrows the windows by what waits for what until nothing changes: by the project's own links, and by pairs that cannot
 * run side by side, of which one must go first when the other way round no longer fits (immediate selection, Carlier &
 * Pinson 1989). Returns false when some job no longer fits into its window: no schedule keeps the deadline.
 */
export function narrow(project: CompiledProject, pairs: readonly Pair[], windows: Windows): boolean {
  for (let changed = true; changed; ) {
    changed = narrowByLinks(project, windows);
    for (const pair of pairs) {
      const verdict = narrowByPair(project, pair, windows);
      if (verdict === 'impossible') return false;
      if (verdict === 'changed') changed = true;
    }
    if (!allFit(project, windows)) return false;
  }
  return true;
}

export type Pair = readonly [one: number, other: number];

/** Pairs of jobs that together need more of something than there is. */
export function findPairs({ size, resources, needs, capacities }: CompiledProject): Pair[] {
  const pairs: Pair[] = [];
  for (let one = 0; one < size; one += 1) {
    for (let other = one + 1; other < size; other += 1) {
      const tooMuch = capacities.some(
        (capacity, resource) =>
          at(needs, one * resources + resource) + at(needs, other * resources + resource) > capacity,
      );
      if (tooMuch) pairs.push([one, other]);
    }
  }
  return pairs;
}

function narrowByLinks({ size, durations, before }: CompiledProject, windows: Windows): boolean {
  let changed = false;
  for (let job = 0; job < size; job += 1) {
    for (let link = at(before.first, job); link < at(before.first, job + 1); link += 1) {
      const other = at(before.others, link);
      if (putBefore(durations, other, job, at(before.lags, link), windows)) changed = true;
    }
  }
  return changed;
}

function narrowByPair(
  { durations }: CompiledProject,
  [one, other]: Pair,
  windows: Windows,
): 'impossible' | 'changed' | 'same' {
  const oneFirst = canPrecede(durations, one, other, windows);
  const otherFirst = canPrecede(durations, other, one, windows);
  if (oneFirst && otherFirst) return 'same';
  if (!oneFirst && !otherFirst) return 'impossible';
  const changed = oneFirst
    ? putBefore(durations, one, other, 0, windows)
    : putBefore(durations, other, one, 0, windows);
  return changed ? 'changed' : 'same';
}

function canPrecede(
  durations: Int32Array,
  first: number,
  second: number,
  { earliestStart, latestFinish }: Windows,
): boolean {
  return at(earliestStart, first) + at(durations, first) <= at(latestFinish, second) - at(durations, second);
}

function putBefore(
  durations: Int32Array,
  first: number,
  second: number,
  lag: number,
  { earliestStart, latestFinish }: Windows,
): boolean {
  const start = at(earliestStart, first) + at(durations, first) + lag;
  const finish = at(latestFinish, second) - at(durations, second) - lag;
  const changed = start > at(earliestStart, second) || finish < at(latestFinish, first);
  earliestStart[second] = Math.max(start, at(earliestStart, second));
  latestFinish[first] = Math.min(finish, at(latestFinish, first));
  return changed;
}

function allFit({ durations }: CompiledProject, { earliestStart, latestFinish }: Windows): boolean {
  return durations.every((duration, job) => at(earliestStart, job) + duration <= at(latestFinish, job));
}
