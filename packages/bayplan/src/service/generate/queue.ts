import { at } from '../../at';

/** What is still to be placed, by priority: the least first, of two alike the smaller number. */
export class Queue {
  readonly #order: Int32Array;
  readonly #pending: Int32Array;
  #count = 0;

  constructor(size: number) {
    this.#order = Int32Array.from({ length: size }, (_, task) => task);
    this.#pending = new Int32Array(size);
  }

  sort(priorities: Float64Array): void {
    this.#order.sort((one, other) => at(priorities, one) - at(priorities, other) || one - other);
  }

  /** Everything wanted is to be placed again. */
  fill(isWanted: (task: number) => boolean): void {
    this.#count = 0;
    for (const task of this.#order) if (isWanted(task)) this.#pending[this.#count++] = task;
  }

  /** Takes out the first one that is ready. */
  takeFirst(isReady: (task: number) => boolean): number | undefined {
    for (let place = 0; place < this.#count; place += 1) {
      if (isReady(at(this.#pending, place))) return this.#takeOut(place);
    }
    return undefined;
  }

  /** Takes out the last one that is wanted. */
  takeLast(isWanted: (task: number) => boolean): number | undefined {
    for (let place = this.#count - 1; place >= 0; place -= 1) {
      if (isWanted(at(this.#pending, place))) return this.#takeOut(place);
    }
    return undefined;
  }

  /** Takes out what is left, ready or not. */
  takeAll(): Int32Array {
    const all = this.#pending.slice(0, this.#count);
    this.#count = 0;
    return all;
  }

  #takeOut(place: number): number {
    const task = at(this.#pending, place);
    this.#pending.copyWithin(place, place + 1, this.#count);
    this.#count -= 1;
    return task;
  }
}
