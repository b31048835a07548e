import { at } from '../../at';
import type { Placements } from './placements';
import { type Wait, waitsOf } from './waits';

/** What waits for what, given which tasks are done and on which sides they are, and for how many each waits still. */
export class Waiting {
  readonly #placements: Placements;
  readonly #waits: readonly Wait[];
  /** By task: what it waits for, and what waits for it. */
  readonly #waitsTo: readonly (readonly Wait[])[];
  readonly #waitsFrom: readonly (readonly Wait[])[];
  readonly #waiting: Int32Array;
  #sides: Uint8Array = new Uint8Array();

  constructor(placements: Placements) {
    const { tasks } = placements.service;
    this.#placements = placements;
    this.#waits = waitsOf(placements.service);
    this.#waitsTo = tasks.map(({ number }) => this.#waits.filter(({ to }) => to === number));
    this.#waitsFrom = tasks.map(({ number }) => this.#waits.filter(({ from }) => from === number));
    this.#waiting = new Int32Array(tasks.length);
  }

  /** From now on each that has a choice is on that side. */
  choose(sides: Uint8Array): void {
    this.#sides = sides;
  }

  /** Nothing is placed yet; nothing waits for what is fixed. */
  begin(): void {
    this.#waiting.fill(0);
    for (const wait of this.#waits) {
      if (this.counts(wait) && !this.#placements.isFixed(wait.from)) this.#add(wait.to, 1);
    }
  }

  isReady(task: number): boolean {
    return at(this.#waiting, task) <= 0;
  }

  /** The task no longer keeps anything waiting, as what is fixed never did. */
  release(task: number): void {
    if (this.#placements.isFixed(task)) return;
    for (const wait of this.#waitsFrom[task] ?? []) if (this.counts(wait)) this.#add(wait.to, -1);
  }

  /** Whether the task waits, by way of others that aren't placed yet, for itself. */
  isOnCircle(task: number): boolean {
    // Grows while it is walked.
    const waiters = new Set([task]);
    for (const one of waiters) {
      for (const wait of this.#waitsFrom[one] ?? []) {
        if (!this.counts(wait) || this.#placements.isPlaced(wait.to)) continue;
        if (wait.to === task) return true;
        waiters.add(wait.to);
      }
    }
    return false;
  }

  /** When all that the task waits for is over; no earlier than `earliest`. */
  overBy(task: number, earliest: number): number {
    let time = earliest;
    for (const wait of this.#waitsTo[task] ?? []) {
      if (this.counts(wait)) time = Math.max(time, at(this.#placements.finishes, wait.from) + wait.lag);
    }
    return time;
  }

  /** By how much too early all that waits starts, in all. */
  countBroken(): number {
    const { starts, finishes } = this.#placements;
    let broken = 0;
    for (const wait of this.#waits) {
      if (!this.counts(wait)) continue;
      broken += Math.max(0, at(finishes, wait.from) + wait.lag - at(starts, wait.to));
    }
    return broken;
  }

  /** All waits, also those that don't count. */
  get all(): readonly Wait[] {
    return this.#waits;
  }

  /** The waits of one task, also those that don't count. */
  before(task: number): readonly Wait[] {
    return this.#waitsTo[task] ?? [];
  }

  counts({ from, to, chooser, side, onlyWith }: Wait): boolean {
    if (!this.#placements.isDone(from) || !this.#placements.isDone(to)) return false;
    if (chooser >= 0 && at(this.#sides, chooser) !== side) return false;
    return onlyWith < 0 || this.#placements.isDone(onlyWith);
  }

  #add(task: number, number: number): void {
    this.#waiting[task] = at(this.#waiting, task) + number;
  }
}
