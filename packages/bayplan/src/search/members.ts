import { at } from '../at';
import type { CompiledProject } from '../compile-project';

/** A schedule kept for breeding. Its start times are its activity list. */
export interface Member {
  starts: Int32Array;
  makespan: number;
  /** Of two equally long schedules the one that finishes its jobs earlier is the one with more room at its end. */
  sumOfStarts: number;
}

/** The best schedules of one side, no two of them the same, and a memory of everything ever generated there. */
export class Members {
  readonly list: Member[] = [];
  readonly #capacity: number;
  readonly #seen = new Set<number>();

  constructor(capacity: number) {
    this.#capacity = capacity;
  }

  get full(): boolean {
    return this.list.length >= this.#capacity;
  }

  /** Whether the same starts were asked about before. Rarely a new one is taken for an old one: that only loses a child. */
  seenBefore(starts: Int32Array): boolean {
    const mark = fingerprint(starts);
    if (this.#seen.has(mark)) return true;
    if (this.#seen.size >= MOST_REMEMBERED) this.#seen.clear();
    this.#seen.add(mark);
    return false;
  }

  /** Takes the place of the worst, unless it is worse itself or already there. */
  admit({ durations }: CompiledProject, starts: Int32Array, makespan: number): void {
    let sumOfStarts = 0;
    for (let job = 0; job < durations.length; job += 1) sumOfStarts += at(starts, job);
    const member = { starts, makespan, sumOfStarts };
    if (this.list.some((other) => isSame(other, member))) return;
    if (!this.full) {
      this.list.push({ ...member, starts: starts.slice() });
      return;
    }
    const worst = this.list.reduce((one, other) => (isBetter(one, other) ? other : one));
    if (isBetter(worst, member)) return;
    this.list[this.list.indexOf(worst)] = { ...member, starts: starts.slice() };
  }
}

const MOST_REMEMBERED = 200_000;

export function isBetter(one: Member, other: Member): boolean {
  if (one.makespan !== other.makespan) return one.makespan < other.makespan;
  return one.sumOfStarts < other.sumOfStarts;
}

function isSame(one: Member, other: Member): boolean {
  if (one.makespan !== other.makespan || one.sumOfStarts !== other.sumOfStarts) return false;
  return one.starts.every((start, job) => start === at(other.starts, job));
}

/** Fowler, Noll & Vo's hash over the starts, as one whole number. */
function fingerprint(starts: Int32Array): number {
  let hash = 0x811c9dc5;
  for (let job = 0; job < starts.length; job += 1) hash = Math.imul(hash ^ at(starts, job), 0x01000193);
  return hash ^ (hash >>> 15);
}
