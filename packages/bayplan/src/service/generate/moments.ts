import { at } from '../../at';

/** The moments at which something that did not fit before may fit, each once and in order. */
export class Moments {
  readonly #always: Int32Array;
  readonly #moments: Int32Array;
  #count = 0;

  /** @param always the moments that are there from the beginning; `most` how many more there may be */
  constructor(always: readonly number[], most: number) {
    this.#always = Int32Array.from(new Set(always)).sort();
    this.#moments = new Int32Array(this.#always.length + most);
    this.clear();
  }

  clear(): void {
    this.#moments.set(this.#always);
    this.#count = this.#always.length;
  }

  add(moment: number): void {
    const place = this.#placeOf(moment);
    if (place < this.#count && at(this.#moments, place) === moment) return;
    this.#moments.copyWithin(place + 1, place, this.#count);
    this.#moments[place] = moment;
    this.#count += 1;
  }

  /** The first one from `time` on, infinity after the last. */
  from(time: number): number {
    const place = this.#placeOf(time);
    return place < this.#count ? at(this.#moments, place) : Number.POSITIVE_INFINITY;
  }

  /** How many lie before, by halving. */
  #placeOf(time: number): number {
    let [low, high] = [0, this.#count];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (at(this.#moments, middle) < time) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}
