import { describe, expect, it } from 'vitest';
import { Chance } from './chance';

describe('Chance', () => {
  it('repeats itself for the same seed, and not for the next', () => {
    const draw = (seed: number) => {
      const chance = new Chance(seed);
      return Array.from({ length: 20 }, () => chance.share());
    };
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
  });

  it('spreads evenly over the whole numbers below', () => {
    const chance = new Chance(1);
    const counts = new Array<number>(10).fill(0);
    for (let drawn = 0; drawn < 100_000; drawn += 1) {
      const number = chance.below(10);
      counts[number] = (counts[number] ?? 0) + 1;
    }
    // Each count has a standard deviation of 95; five of them are beyond chance.
    for (const count of counts) expect(Math.abs(count - 10_000)).toBeLessThan(475);
  });
});
