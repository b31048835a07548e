import { at } from './at';
import type { CompiledProject } from './compile-project';

/**
 * What is free when. Time is cut only where something starts or finishes, so the cost grows with the number of
 * activities, never with the length of time. After the last cut everything is free.
 */
export class Timeline {
  readonly #project: CompiledProject;
  readonly #times: Int32Array;
  readonly #free: Int32Array;
  #cuts = 0;

  constructor(project: CompiledProject) {
    const most = 2 * project.size + 2;
    this.#project = project;
    this.#times = new Int32Array(most);
    this.#free = new Int32Array(most * project.resources);
    this.clear();
  }

  clear(): void {
    this.#cuts = 1;
    this.#times[0] = 0;
    this.#free.set(this.#project.capacities);
  }

  /** The earliest time from `from` on at which the job can run through. */
  earliestFit(job: number, from: number): number {
    const times = this.#times;
    const duration = at(this.#project.durations, job);
    let start = from;
    for (let cut = this.#cutAt(from); cut < this.#cuts; cut += 1) {
      const next = cut + 1 < this.#cuts ? at(times, cut + 1) : Number.POSITIVE_INFINITY;
      if (!this.#fits(job, cut)) start = next;
      else if (next >= start + duration) break;
    }
    return start;
  }

  /** Whether the job can run through from `start`. */
  fitsAt(job: number, start: number): boolean {
    return this.earliestFit(job, start) === start;
  }

  book(job: number, start: number): void {
    const { durations, resources, needs } = this.#project;
    const duration = at(durations, job);
    if (duration === 0) return;
    const from = this.#split(start);
    const to = this.#split(start + duration);
    for (let cut = from; cut < to; cut += 1) {
      for (let resource = 0; resource < resources; resource += 1) {
        const cell = cut * resources + resource;
        this.#free[cell] = at(this.#free, cell) - at(needs, job * resources + resource);
      }
    }
  }

  #fits(job: number, cut: number): boolean {
    const { resources, needs } = this.#project;
    for (let resource = 0; resource < resources; resource += 1) {
      if (at(this.#free, cut * resources + resource) < at(needs, job * resources + resource)) return false;
    }
    return true;
  }

  #cutAt(time: number): number {
    let cut = this.#cuts - 1;
    while (at(this.#times, cut) > time) cut -= 1;
    return cut;
  }

  #split(time: number): number {
    const cut = this.#cutAt(time);
    if (at(this.#times, cut) === time) return cut;
    const { resources } = this.#project;
    this.#times.copyWithin(cut + 2, cut + 1, this.#cuts);
    this.#times[cut + 1] = time;
    this.#free.copyWithin((cut + 1) * resources, cut * resources, this.#cuts * resources);
    this.#cuts += 1;
    return cut + 1;
  }
}
