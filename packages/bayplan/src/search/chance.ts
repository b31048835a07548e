/**
 * A seeded source of numbers: xorshift128 (Marsaglia 2003), its state filled from the seed by the mixing function of
 * SplitMix32, so that seeds next to each other have nothing in common. Same seed, same numbers, on every machine.
 */
export class Chance {
  readonly #state = new Uint32Array(4);

  constructor(seed: number) {
    let counter = seed >>> 0;
    for (let word = 0; word < 4; word += 1) {
      counter = (counter + 0x9e3779b9) >>> 0;
      let mixed = Math.imul(counter ^ (counter >>> 16), 0x21f0aaad);
      mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
      this.#state[word] = mixed ^ (mixed >>> 15);
    }
    if (this.#state.every((word) => word === 0)) this.#state[0] = 1;
  }

  /** From 0 up to but not including 1. */
  share(): number {
    return this.#next() / 0x1_0000_0000;
  }

  /** One of 0, 1, … below − 1. */
  below(below: number): number {
    return Math.floor(this.share() * below);
  }

  #next(): number {
    const [first = 0, second = 0, third = 0, fourth = 0] = this.#state;
    const shifted = first ^ (first << 11);
    const next = fourth ^ (fourth >>> 19) ^ shifted ^ (shifted >>> 8);
    this.#state.set([second, third, fourth, next]);
    return next >>> 0;
  }
}
