import { at } from '../../at';
import type { CompiledTask } from '../compile-service';
import type { Ties } from './choose-work';
import type { Placements } from './placements';
import type { Waiting } from './waiting';

/** By when what can be left must start, lest what can't be left should be finished after the out-time of its car. */
export class LastChances {
  readonly #placements: Placements;
  readonly #waiting: Waiting;
  /** By when each must be finished for what can't be left to be finished by the out-time after it. */
  readonly #latest: Float64Array;
  readonly #isEnd: Uint8Array;
  readonly #isTied: Uint8Array;
  /** By task: who else needs what is opened for it. */
  readonly #sharers: readonly (readonly (readonly number[])[])[];

  constructor(placements: Placements, waiting: Waiting, { ends, together }: Ties) {
    const { tasks } = placements.service;
    const isEnd = (task: number) => ends.some(({ end }) => end === task);
    this.#placements = placements;
    this.#waiting = waiting;
    this.#latest = new Float64Array(tasks.length);
    this.#isEnd = Uint8Array.from(tasks, ({ number }) => Number(isEnd(number)));
    this.#isTied = Uint8Array.from(tasks, ({ number }) =>
      Number(isEnd(number) || together.some((pair) => pair.includes(number))),
    );
    this.#sharers = tasks.map(({ number }) =>
      ends.flatMap(({ users }) => (users.includes(number) ? [users] : [])),
    );
  }

  begin(): void {
    const { tasks, cars } = this.#placements.service;
    for (const { number, car } of tasks) this.#latest[number] = cars[car]?.outTime ?? 0;
    // Each round carries a time one wait further; a circle stops there too.
    for (let round = 0; round < tasks.length && this.#carryBack(); round += 1);
  }

  /** For what can be left, when it must start at the latest. */
  of(task: CompiledTask): number | undefined {
    if (!this.#canLeave(task)) return undefined;
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

  /** Nothing that must be done, or that something else hangs on. */
  #canLeave({ number, must }: CompiledTask): boolean {
    if (must || at(this.#isTied, number)) return false;
    return (this.#sharers[number] ?? []).every((users) =>
      users.some((user) => user !== number && this.#placements.isPlaced(user)),
    );
  }
}
