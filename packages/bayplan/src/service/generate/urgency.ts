import { at } from '../../at';
import { forcedSides } from './forced-sides';
import type { Placements } from './placements';
import type { Waiting } from './waiting';
import type { Wait } from './waits';

/**
 * The order in which to place what was wished: that of the priorities, except that what can only come before something is
 * opened is no less urgent than the opening, nor is what it waits for. It would hold back the opening until its turn, and
 * with it all that needs it, even when it is left in the end.
 */
export class Urgency {
  readonly #waiting: Waiting;
  /** From what can only come before an opening to that opening. */
  readonly #waits: readonly Wait[];
  readonly #urgency: Float64Array;

  constructor({ service }: Placements, waiting: Waiting) {
    const forced = forcedSides(service);
    this.#waiting = waiting;
    this.#waits = waiting.all.filter(
      ({ from, chooser, side }) => from === chooser && side === 0 && at(forced, from) === 0,
    );
    this.#urgency = new Float64Array(service.tasks.length);
  }

  /** The least goes first, as of the priorities. The same array each time. */
  of(priorities: Float64Array): Float64Array {
    this.#urgency.set(priorities);
    for (const wait of this.#waits) {
      if (this.#waiting.counts(wait)) this.#raise(wait.from, at(this.#urgency, wait.to));
    }
    return this.#urgency;
  }

  /** The task and all that it waits for, near or far; each once, so that a circle ends. */
  #raise(task: number, urgency: number): void {
    const reached = new Set([task]);
    for (const one of reached) {
      this.#urgency[one] = Math.min(at(this.#urgency, one), urgency);
      for (const wait of this.#waiting.before(one)) if (this.#waiting.counts(wait)) reached.add(wait.from);
    }
  }
}
