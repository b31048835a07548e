import type { Engine, Narrowing } from '../../exact/engine';
import { read } from '../../exact/int-list';

/** So much, from 1, times what a slot knows: of slot 2x + 1 the number counts as −x. */
export interface Term {
  slot: number;
  factor: number;
}

/** "The sum of the terms is at most `most`": each may be at most what the others, as small as they can be, leave of it. */
export class Linear implements Narrowing {
  readonly slots: Int32Array;
  isDue = true;
  readonly #factors: Int32Array;
  #most: number;

  constructor(terms: readonly Term[], most: number) {
    this.slots = Int32Array.from(terms, ({ slot }) => slot);
    this.#factors = Int32Array.from(terms, ({ factor }) => factor);
    this.#most = most;
  }

  /** Only ever less, and only at level 0. */
  lower(most: number): void {
    this.isDue = true;
    this.#most = Math.min(this.#most, most);
  }

  /** The least the sum can be as things are known. */
  leastSum({ values }: { values: Int32Array }): number {
    let sum = 0;
    for (let term = 0; term < this.slots.length; term += 1) {
      sum += read(this.#factors, term) * read(values, read(this.slots, term));
    }
    return sum;
  }

  narrow(engine: Engine): boolean {
    const { values } = engine.trail;
    const spare = this.#most - this.leastSum(engine.trail);
    if (spare < 0) {
      engine.clash.length = 0;
      this.#addOthers(values, -1, (slot, value) => {
        engine.clash.push(slot);
        engine.clash.push(value);
      });
      return false;
    }
    for (let term = 0; term < this.slots.length; term += 1) {
      const slot = read(this.slots, term);
      const most = read(values, slot) + Math.floor(spare / read(this.#factors, term));
      if (-most <= read(values, slot ^ 1)) continue;
      const reason = engine.notes.begin();
      this.#addOthers(values, term, (other, value) => engine.notes.add(other, value));
      if (!engine.demand(slot ^ 1, -most, reason)) return false;
    }
    return true;
  }

  #addOthers(values: Int32Array, apart: number, add: (slot: number, value: number) => void): void {
    for (let term = 0; term < this.slots.length; term += 1) {
      const slot = read(this.slots, term);
      if (term !== apart) add(slot, read(values, slot));
    }
  }
}
