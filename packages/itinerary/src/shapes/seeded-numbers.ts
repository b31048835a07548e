/** Whole numbers from 0 to below a bound, evenly spread, the same row of them for the same seed (mulberry32). */
export function numbersFrom(seed: number): (below: number) => number {
  let state = (seed * 2_654_435_761 + 1) >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296) * below);
  };
}
