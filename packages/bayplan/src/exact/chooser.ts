import type { Pair } from '../bounds/windows';
import type { CompiledProject } from '../compile-project';
import type { Engine } from './engine';
import { read } from './int-list';
import { Involvement } from './involvement';

/** Any open order will do, also one that never had part in anything. */
const ANY = -1;

/**
 * What to decide next. One way: the open order of a pair that lately had most part in contradictions (Moskewicz & others
 * 2001), as in the shortest schedule known; the other way, and when all orders are settled: of the open starts the
 * earliest, as early as it can be.
 */
export class Chooser {
  readonly #project: CompiledProject;
  readonly #pairs: readonly Pair[];
  readonly #orders: Int32Array;
  readonly involvement: Involvement;

  constructor(project: CompiledProject, pairs: readonly Pair[]) {
    this.#project = project;
    this.#pairs = pairs;
    this.#orders = Int32Array.from(pairs, (_, place) => project.size + place);
    this.involvement = new Involvement(project.size + pairs.length);
  }

  /** False when there is nothing left to decide: every start is known. */
  decide(engine: Engine, known: Int32Array, byWeight: boolean): boolean {
    const { values } = engine.trail;
    const order = byWeight ? this.involvement.heaviestOpen(values, this.#orders, ANY) : -1;
    if (order >= 0) {
      const [one, other] = this.#pairs[order - this.#project.size] ?? [0, 0];
      if (read(known, one) < read(known, other)) engine.decide(2 * order, 1);
      else engine.decide(2 * order + 1, 0);
      return true;
    }
    const job = this.#earliestOpen(values);
    if (job < 0) return false;
    engine.decide(2 * job + 1, -read(values, 2 * job));
    return true;
  }

  #earliestOpen(values: Int32Array): number {
    let earliest = -1;
    for (let job = 0; job < this.#project.size; job += 1) {
      const start = read(values, 2 * job);
      const latest = -read(values, 2 * job + 1);
      if (start === latest) continue;
      if (earliest < 0 || start < read(values, 2 * earliest)) earliest = job;
      else if (start === read(values, 2 * earliest) && latest < -read(values, 2 * earliest + 1))
        earliest = job;
    }
    return earliest;
  }
}
