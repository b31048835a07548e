import { at } from '../at';
import { type CompiledProject, mirrorProject } from '../compile-project';
import { Generator } from './generator';
import { mirrorStarts } from './mirror-starts';

/** A project in one direction of time, with what is needed to make schedules in it. */
export class Side {
  readonly project: CompiledProject;
  readonly generator: Generator;
  readonly #keys: Float64Array;
  readonly #order: Int32Array;

  constructor(project: CompiledProject) {
    this.project = project;
    this.generator = new Generator(project);
    this.#keys = new Float64Array(project.size);
    this.#order = new Int32Array(project.size);
  }

  /**
   * Half of a double justification: takes a schedule of the other side and pushes everything as far as it goes towards
   * this side's beginning, what is nearest to it first, of two equally near the smaller job of this side. Counts as one
   * schedule; never makes it longer.
   *
   * Since jobs are numbered backwards on the backward side, a pass to the right takes jobs by decreasing finish with the
   * larger number first, a pass to the left by increasing start with the smaller number first.
   */
  justify(other: CompiledProject, theirs: Int32Array, makespan: number, starts: Int32Array): number {
    mirrorStarts(other, theirs, makespan, starts);
    const { size } = this.project;
    for (let job = 0; job < size; job += 1) this.#keys[job] = at(starts, job) * size + job;
    this.#keys.sort();
    for (let place = 0; place < size; place += 1) this.#order[place] = at(this.#keys, place) % size;
    return this.generator.serialInOrder(this.#order, starts);
  }
}

/** Both directions of time: forward first. */
export function bothSides(project: CompiledProject): [Side, Side] {
  return [new Side(project), new Side(mirrorProject(project))];
}
