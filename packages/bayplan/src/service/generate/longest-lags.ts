import { at } from '../../at';
import type { CompiledLink } from '../compile-service';
import type { Placements } from './placements';

interface LongestLag extends CompiledLink {
  maxLag: number;
}

/** What must follow something before long. What was done too early for that is held back when the plan is made again. */
export class LongestLags {
  readonly #placements: Placements;
  readonly #links: readonly LongestLag[];
  readonly #held: Int32Array;

  constructor(placements: Placements) {
    const { links, tasks } = placements.service;
    this.#placements = placements;
    this.#links = links.flatMap(({ maxLag, ...link }) => (maxLag === undefined ? [] : [{ ...link, maxLag }]));
    this.#held = new Int32Array(tasks.length);
  }

  /** Nothing is held back beyond its own earliest start. */
  begin(): void {
    for (const { number, earliest } of this.#placements.service.tasks) this.#held[number] = earliest;
  }

  /** The task does not start before. */
  heldUntil(task: number): number {
    return at(this.#held, task);
  }

  /** By how much too late all that should follow before long starts, in all. */
  countBroken(): number {
    return this.#links.reduce((sum, link) => sum + this.#overBy(link), 0);
  }

  /** What was done too early starts so much later next time. False when there is no such thing. */
  holdBack(): boolean {
    let held = false;
    for (const link of this.#links) {
      const over = this.#placements.isFixed(link.before) ? 0 : this.#overBy(link);
      if (over === 0) continue;
      const start = at(this.#placements.starts, link.before) + over;
      this.#held[link.before] = Math.max(at(this.#held, link.before), start);
      held = true;
    }
    return held;
  }

  #overBy({ before, after, maxLag }: LongestLag): number {
    const { starts, finishes } = this.#placements;
    if (!this.#placements.isDone(before) || !this.#placements.isDone(after)) return 0;
    return Math.max(0, at(starts, after) - at(finishes, before) - maxLag);
  }
}
