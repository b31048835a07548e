import { at } from './at';
import type { CompiledProject } from './compile-project';
import { Cuts } from './cuts';

/** What is free when. After the last cut everything is. */
export class Timeline {
  readonly #project: CompiledProject;
  readonly #free: Cuts;

  constructor(project: CompiledProject) {
    this.#project = project;
    this.#free = new Cuts(2 * project.size + 2, project.resources);
    this.clear();
  }

  clear(): void {
    this.#free.clear(0, this.#project.capacities);
  }

  /** The earliest time from `from` on at which the job can run through. */
  earliestFit(job: number, from: number): number {
    const duration = at(this.#project.durations, job);
    let start = from;
    for (let cut = this.#free.rowAt(from); cut < this.#free.count; cut += 1) {
      const next = this.#free.endOf(cut);
      if (!this.#fits(job, cut)) start = next;
      else if (next >= start + duration) break;
    }
    return start;
  }

  book(job: number, start: number): void {
    const { durations, resources, needs } = this.#project;
    const duration = at(durations, job);
    if (duration === 0) return;
    const from = this.#free.split(start);
    const to = this.#free.split(start + duration);
    const { cells } = this.#free;
    for (let cut = from; cut < to; cut += 1) {
      for (let resource = 0; resource < resources; resource += 1) {
        const cell = cut * resources + resource;
        cells[cell] = at(cells, cell) - at(needs, job * resources + resource);
      }
    }
  }

  #fits(job: number, cut: number): boolean {
    const { resources, needs } = this.#project;
    const { cells } = this.#free;
    for (let resource = 0; resource < resources; resource += 1) {
      if (at(cells, cut * resources + resource) < at(needs, job * resources + resource)) return false;
    }
    return true;
  }
}
