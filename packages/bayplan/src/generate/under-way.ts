import { at } from '../at';
import type { CompiledProject } from '../compile-project';

/** What runs at one moment and what it leaves free, while time only moves on. */
export class UnderWay {
  readonly #project: CompiledProject;
  readonly #free: Int32Array;
  readonly #jobs: Int32Array;
  readonly #finishes: Int32Array;
  #count = 0;

  constructor(project: CompiledProject) {
    this.#project = project;
    this.#free = new Int32Array(project.resources);
    this.#jobs = new Int32Array(project.size);
    this.#finishes = new Int32Array(project.size);
  }

  begin(): void {
    this.#free.set(this.#project.capacities);
    this.#count = 0;
  }

  /** Whether the job can start now; then it can run through, for nothing else has started later than now. */
  fits(job: number): boolean {
    const { resources, needs } = this.#project;
    for (let resource = 0; resource < resources; resource += 1) {
      if (at(this.#free, resource) < at(needs, job * resources + resource)) return false;
    }
    return true;
  }

  start(job: number, finish: number): void {
    this.#change(job, -1);
    this.#jobs[this.#count] = job;
    this.#finishes[this.#count] = finish;
    this.#count += 1;
  }

  /** Lets all go that has finished by then. */
  moveTo(now: number): void {
    for (let place = this.#count - 1; place >= 0; place -= 1) {
      if (at(this.#finishes, place) > now) continue;
      this.#change(at(this.#jobs, place), 1);
      this.#count -= 1;
      this.#jobs[place] = at(this.#jobs, this.#count);
      this.#finishes[place] = at(this.#finishes, this.#count);
    }
  }

  /** When the first of what runs finishes after now; Infinity when nothing does. */
  nextFinish(now: number): number {
    let next = Number.POSITIVE_INFINITY;
    for (let place = 0; place < this.#count; place += 1) {
      const finish = at(this.#finishes, place);
      if (finish > now && finish < next) next = finish;
    }
    return next;
  }

  #change(job: number, times: 1 | -1): void {
    const { resources, needs } = this.#project;
    for (let resource = 0; resource < resources; resource += 1) {
      this.#free[resource] = at(this.#free, resource) + times * at(needs, job * resources + resource);
    }
  }
}
