import { at } from '../at';

/** A schedule kept for breeding. Its start times are its activity list. */
export interface Member {
  starts: Int32Array;
  makespan: number;
  /** Of two equally long schedules the one that finishes its jobs earlier is the one with more room at its end. */
  sumOfStarts: number;
}

/**
 * Good schedules of one side, unlike each other, and a memory of everything ever generated there. There are few at first,
 * so that a short search gets somewhere, and more as it grows longer, so that it doesn't settle too soon.
 */
export class Members {
  readonly list: Member[] = [];
  readonly #seen = new Set<number>();
  #capacity = FEWEST;
  #asked = 0;

  get full(): boolean {
    return this.list.length >= this.#capacity;
  }

  /** Whether the same starts were asked about before. Rarely a new one is taken for an old one: that only loses a child. */
  seenBefore(starts: Int32Array): boolean {
    this.#asked += 1;
    this.#capacity = Math.max(FEWEST, Math.round(GROWTH * Math.sqrt(this.#asked)));
    const mark = fingerprint(starts);
    if (this.#seen.has(mark)) return true;
    if (this.#seen.size >= MOST_REMEMBERED) this.#seen.clear();
    this.#seen.add(mark);
    return false;
  }

  /**
   * Takes the place of the member it is most like, if that is close and worse (a form of crowding: Mahfoud 1992); else of
   * the worst, unless it is worse itself. Two of the same length with the same sum of starts count as one.
   */
  admit(starts: Int32Array, makespan: number): void {
    const member = { starts, makespan, sumOfStarts: sumOf(starts) };
    if (this.list.some((other) => isAsGood(other, member))) return;
    const rival = this.#closest(member) ?? (this.full ? this.#worst() : undefined);
    if (!rival) this.list.push({ ...member, starts: starts.slice() });
    else if (isBetter(member, rival)) {
      this.list[this.list.indexOf(rival)] = { ...member, starts: starts.slice() };
    }
  }

  #worst(): Member {
    return this.list.reduce((one, other) => (isBetter(one, other) ? other : one));
  }

  /** The member most like this one, if they are close. */
  #closest({ starts, makespan }: Member): Member | undefined {
    let least = CLOSE * makespan * starts.length;
    let closest: Member | undefined;
    for (const member of this.list) {
      const distance = distanceBetween(member.starts, starts);
      if (distance >= least) continue;
      least = distance;
      closest = member;
    }
    return closest;
  }
}

const FEWEST = 15;
/** Members for the square root of the schedules generated on this side. */
const GROWTH = 1;
/** Of the makespan: the mean difference between the starts of two schedules that are close. */
const CLOSE = 0.01;
const MOST_REMEMBERED = 200_000;

export function isBetter(one: Member, other: Member): boolean {
  if (one.makespan !== other.makespan) return one.makespan < other.makespan;
  return one.sumOfStarts < other.sumOfStarts;
}

function isAsGood(one: Member, other: Member): boolean {
  return one.makespan === other.makespan && one.sumOfStarts === other.sumOfStarts;
}

function sumOf(starts: Int32Array): number {
  return starts.reduce((sum, start) => sum + start, 0);
}

function distanceBetween(one: Int32Array, other: Int32Array): number {
  let distance = 0;
  for (let job = 0; job < one.length; job += 1) distance += Math.abs(at(one, job) - at(other, job));
  return distance;
}

/** Fowler, Noll & Vo's hash over the starts, as one whole number. */
function fingerprint(starts: Int32Array): number {
  let hash = 0x811c9dc5;
  for (let job = 0; job < starts.length; job += 1) hash = Math.imul(hash ^ at(starts, job), 0x01000193);
  return hash ^ (hash >>> 15);
}
