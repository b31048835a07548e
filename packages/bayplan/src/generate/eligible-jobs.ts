import { at } from '../at';
import type { CompiledProject } from '../compile-project';

/** The jobs whose predecessors are all placed, in no order, and the earliest start that these leave to each. */
export class EligibleJobs {
  readonly list: Int32Array;
  count = 0;
  /** By job; final once the job is eligible. */
  readonly earliest: Int32Array;
  readonly #project: CompiledProject;
  readonly #waiting: Int32Array;

  constructor(project: CompiledProject) {
    this.#project = project;
    this.list = new Int32Array(project.size);
    this.earliest = new Int32Array(project.size);
    this.#waiting = new Int32Array(project.size);
  }

  begin(): void {
    const { size, before } = this.#project;
    this.count = 0;
    this.earliest.fill(0);
    for (let job = 0; job < size; job += 1) {
      const waiting = at(before.first, job + 1) - at(before.first, job);
      this.#waiting[job] = waiting;
      if (waiting === 0) this.#add(job);
    }
  }

  /** Takes the job at this place off the list: it is placed, and finishes then. What waited for it may become eligible. */
  take(place: number, finish: number): void {
    const { first, others, lags } = this.#project.behind;
    const job = at(this.list, place);
    this.count -= 1;
    this.list[place] = at(this.list, this.count);
    for (let link = at(first, job); link < at(first, job + 1); link += 1) {
      const other = at(others, link);
      this.earliest[other] = Math.max(at(this.earliest, other), finish + at(lags, link));
      this.#waiting[other] = at(this.#waiting, other) - 1;
      if (at(this.#waiting, other) === 0) this.#add(other);
    }
  }

  #add(job: number): void {
    this.list[this.count] = job;
    this.count += 1;
  }
}
