import { read } from './int-list';

const FADING = 0.95;
const LARGEST = 1e100;

/** How much part each number lately had in contradictions (Moskewicz & others 2001). */
export class Involvement {
  readonly #weights: Float64Array;
  #weight = 1;

  constructor(size: number) {
    this.#weights = new Float64Array(size);
  }

  /** The number of this slot had part in a contradiction. */
  touch(slot: number): void {
    const weight = (this.#weights[slot >> 1] as number) + this.#weight;
    this.#weights[slot >> 1] = weight;
    if (weight < LARGEST) return;
    for (let number = 0; number < this.#weights.length; number += 1) {
      this.#weights[number] = (this.#weights[number] as number) / LARGEST;
    }
    this.#weight /= LARGEST;
  }

  fade(): void {
    this.#weight /= FADING;
  }

  /** Of the open ones among these the one with the most part, of several the first; −1 when none has more than `above`. */
  heaviestOpen(values: Int32Array, numbers: Int32Array, above: number): number {
    let heaviest = -1;
    let most = above;
    for (let place = 0; place < numbers.length; place += 1) {
      const number = numbers[place] as number;
      const weight = this.#weights[number] as number;
      if (weight <= most || !isOpen(values, number)) continue;
      heaviest = number;
      most = weight;
    }
    return heaviest;
  }
}

/** Not known yet: its least and its greatest value differ. */
export function isOpen(values: Int32Array, number: number): boolean {
  return read(values, 2 * number) < -read(values, 2 * number + 1);
}
