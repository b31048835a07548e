import { at } from '../at';
import { findPairs, type Pair } from '../bounds/windows';
import type { CompiledProject } from '../compile-project';
import { IntList, read } from './int-list';

/** "Slot `to` is at least slot `from` plus `lengths`", always or only when a fact holds. */
export class Arcs {
  readonly from = new IntList();
  readonly to = new IntList();
  readonly lengths = new IntList();
  /** The slot of the fact on which the arc depends, or −1. */
  readonly ifSlot = new IntList();
  readonly ifValue = new IntList();
  /** Per slot the arcs that a raise of it may set going. */
  readonly touching: readonly IntList[];

  constructor(slots: number) {
    this.touching = Array.from({ length: slots }, () => new IntList());
  }

  /** Number `second` is at least `length` more than `first`; seen from the other end, `first` so much less. */
  addBoth(first: number, second: number, length: number, ifSlot: number, ifValue: number): void {
    this.#add(2 * first, 2 * second, length, ifSlot, ifValue);
    this.#add(2 * second + 1, 2 * first + 1, length, ifSlot, ifValue);
  }

  #add(from: number, to: number, length: number, ifSlot: number, ifValue: number): void {
    const arc = this.from.length;
    this.from.push(from);
    this.to.push(to);
    this.lengths.push(length);
    this.ifSlot.push(ifSlot);
    this.ifValue.push(ifValue);
    this.touching[from]?.push(arc);
    this.touching[ifSlot]?.push(arc);
  }
}

/**
 * The arcs of a project: what waits for what, and the two orders of each pair of jobs that can't run side by side. Numbers
 * 0 … size − 1 are the starts of the jobs; number `size + n` is 1 when the first of pair n goes first, 0 when the other does.
 */
export function arcsOf(project: CompiledProject): { arcs: Arcs; pairs: readonly Pair[] } {
  const pairs = findOpenPairs(project);
  const arcs = new Arcs(2 * (project.size + pairs.length));
  addLinks(arcs, project);
  pairs.forEach(([one, other], place) => {
    const order = project.size + place;
    arcs.addBoth(one, other, at(project.durations, one), 2 * order, 1);
    arcs.addBoth(other, one, at(project.durations, other), 2 * order + 1, 0);
  });
  return { arcs, pairs };
}

function addLinks(arcs: Arcs, { size, before, durations }: CompiledProject): void {
  for (let job = 0; job < size; job += 1) {
    for (let link = at(before.first, job); link < at(before.first, job + 1); link += 1) {
      const other = at(before.others, link);
      arcs.addBoth(other, job, at(durations, other) + at(before.lags, link), -1, 0);
    }
  }
}

/** Pairs that can't run side by side and whose order the project leaves open. */
function findOpenPairs(project: CompiledProject): Pair[] {
  const { size, before } = project;
  const waitsFor = new Uint8Array(size * size);
  for (let job = 0; job < size; job += 1) {
    for (let link = at(before.first, job); link < at(before.first, job + 1); link += 1) {
      const other = read(before.others, link);
      waitsFor[job * size + other] = 1;
      for (let far = 0; far < other; far += 1) {
        if (at(waitsFor, other * size + far) === 1) waitsFor[job * size + far] = 1;
      }
    }
  }
  return findPairs(project).filter(([one, other]) => at(waitsFor, other * size + one) === 0);
}
