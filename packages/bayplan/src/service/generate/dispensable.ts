import { at } from '../../at';
import type { CompiledTask } from '../compile-service';
import type { Ties } from './choose-work';
import type { Placements } from './placements';

/** What can still be left while a plan is made: nothing that must be done, or that something else hangs on. */
export class Dispensable {
  readonly #placements: Placements;
  readonly #isTied: Uint8Array;
  /** By task: who else needs what is opened for it. */
  readonly #sharers: readonly (readonly (readonly number[])[])[];

  constructor(placements: Placements, { ends, together }: Ties) {
    const { tasks } = placements.service;
    this.#placements = placements;
    this.#isTied = Uint8Array.from(tasks, ({ number }) =>
      Number(ends.some(({ end }) => end === number) || together.some((pair) => pair.includes(number))),
    );
    this.#sharers = tasks.map(({ number }) =>
      ends.flatMap(({ users }) => (users.includes(number) ? [users] : [])),
    );
  }

  /** Whether all that is done besides can be done without the task. */
  has({ number, must }: CompiledTask): boolean {
    if (must || at(this.#isTied, number)) return false;
    return (this.#sharers[number] ?? []).every((users) =>
      users.some((user) => user !== number && this.#stays(user)),
    );
  }

  /** What is placed is never taken out again. */
  #stays(task: number): boolean {
    return this.#placements.isPlaced(task) || this.#placements.service.tasks[task]?.must === true;
  }
}
