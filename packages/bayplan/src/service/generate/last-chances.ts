import { at } from '../../at';
import type { CompiledTask } from '../compile-service';
import type { Ties } from './choose-work';
import type { Dispensable } from './dispensable';
import type { Placements } from './placements';
import type { Waiting } from './waiting';

/** By when what can be left must start, lest what can't be left should be finished after the out-time of its car. */
export class LastChances {
  readonly #placements: Placements;
  readonly #waiting: Waiting;
  /** By when each must be finished for what can't be left to be finished by the out-time after it. */
  readonly #latest: Float64Array;
  readonly #isEnd: Uint8Array;
  readonly #dispensable: Dispensable;

  constructor(placements: Placements, waiting: Waiting, { ends }: Ties, dispensable: Dispensable) {
    const { tasks } = placements.service;
    this.#placements = placements;
    this.#waiting = waiting;
    this.#latest = new Float64Array(tasks.length);
    this.#isEnd = Uint8Array.from(tasks, ({ number }) => Number(ends.some(({ end }) => end === number)));
    this.#dispensable = dispensable;
  }

  begin(): void {
    const { tasks, cars } = this.#placements.service;
    for (const { number, car } of tasks) this.#latest[number] = cars[car]?.outTime ?? 0;
    // Each round carries a time one wait further; a circle stops there too.
    for (let round = 0; round < tasks.length && this.#carryBack(); round += 1);
  }

  /** For what can be left, when it must start at the latest. */
  of(task: CompiledTask): number | undefined {
    if (!this.#dispensable.has(task)) return undefined;
    return at(this.#latest, task.number) - this.#placements.durationOf(task.number);
  }

  /** False when nothing changes any more. */
  #carryBack(): boolean {
    let changed = false;
    for (const wait of this.#waiting.all) {
      if (!this.#stays(wait.to) || !this.#waiting.counts(wait)) continue;
      const latest = at(this.#latest, wait.to) - this.#placements.durationOf(wait.to) - wait.lag;
      if (latest >= at(this.#latest, wait.from)) continue;
      this.#latest[wait.from] = latest;
      changed = true;
    }
    return changed;
  }

  #stays(task: number): boolean {
    return this.#placements.service.tasks[task]?.must === true || at(this.#isEnd, task) === 1;
  }
}
