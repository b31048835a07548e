/** A source of chance that gives the same numbers for the same seed, so that a failing run can be repeated. */
export interface Chance {
  /** From 0 to `below` - 1. */
  whole(below: number): number;
  pick<T>(items: readonly T[]): T;
  shuffled<T>(items: readonly T[]): T[];
}

export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  // Mulberry32, a published generator: even enough for tests, and small.
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (below: number) => Math.floor(next() * below);
  return {
    whole,
    pick<T>(items: readonly T[]): T {
      const item = items[whole(items.length)];
      if (item === undefined) throw new Error('chance: there is nothing to pick from');
      return item;
    },
    shuffled: (items) =>
      items
        .map((item) => ({ item, key: next() }))
        .sort((one, other) => one.key - other.key)
        .map(({ item }) => item),
  };
}
