import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, frozen, HANDBOOK_FAILURES, NIST_REPAIRS, refused, relativeError } from '../fixtures';
import { laplaceTrend } from './laplace-trend';
import { militaryHandbookTrend } from './military-handbook-trend';
import type { EventHistory } from './read-history';
import { reverseArrangements } from './reverse-arrangements';

const NIST: EventHistory = { stoppedAt: 'distance', events: NIST_REPAIRS, end: 1500 };
const HANDBOOK: EventHistory = { stoppedAt: 'distance', events: HANDBOOK_FAILURES, end: 300 };

describe('the trend tests, against published values', () => {
  // NIST/SEMATECH e-Handbook 8.2.3.4 and 8.4.5.2; further digits computed with R.
  it('gives Laplace’s statistic of the NIST repairs and of MIL-HDBK-189 (1981) appendix C', () => {
    const nist = answered(laplaceTrend(frozen(NIST)));
    expect(relativeError(nist.statistic, -1.32694918)).toBeLessThan(3e-9);
    expect(relativeError(nist.pImproving, 0.0922627467)).toBeLessThan(1e-9);
    const handbook = answered(laplaceTrend(HANDBOOK));
    expect(handbook.statistic).toBeCloseTo(-2.318, 9);
    expect(relativeError(handbook.pImproving, 0.0102246605)).toBeLessThan(1e-8);
    expect(handbook.direction).toBe('improving');
  });

  it('gives the Military Handbook statistic of both', () => {
    const nist = answered(militaryHandbookTrend(frozen(NIST)));
    expect(relativeError(nist.statistic, 37.2280815)).toBeLessThan(2e-9);
    expect(relativeError(nist.pWorsening, 0.989013643)).toBeLessThan(1e-9);
    expect(nist.direction).toBe('improving');
    const handbook = answered(militaryHandbookTrend(HANDBOOK));
    expect(relativeError(handbook.statistic, 75.3832755)).toBeLessThan(2e-9);
    expect(relativeError(handbook.pWorsening, 0.971135307)).toBeLessThan(1e-9);
  });

  it('counts 33 of 45 reverse arrangements of the NIST repairs, just significant at 95 % on one side', () => {
    const seen = answered(reverseArrangements(frozen(NIST_REPAIRS)));
    expect(seen.statistic).toBe(33);
    expect(seen.pImproving).toBeLessThan(0.05);
    // "Just": one arrangement fewer would not be.
    expect(seen.pImproving + (countedOrders(10)[32] ?? 0) / factorial(10)).toBeGreaterThan(0.05);
    expect(answered(reverseArrangements(NIST_REPAIRS, { level: 0.9 })).direction).toBe('improving');
    expect(seen.direction).toBe('noTrend');
  });

  it('has the exact distribution of pairs over all orders (Kendall 1938; the Mahonian numbers)', () => {
    // 4 gaps: 1, 3, 5, 6, 5, 3, 1 of 24 orders have 0 to 6 longer later pairs.
    const gaps = [10, 20, 30, 40];
    const asEvents = (order: number[]) => order.map((_, index) => sum(order.slice(0, index + 1)));
    const tails = permutations(gaps).map((order) => {
      const { statistic, pImproving, pWorsening } = answered(reverseArrangements(asEvents(order)));
      return { statistic, pImproving: pImproving * 24, pWorsening: pWorsening * 24 };
    });
    const upperTails = [24, 23, 20, 15, 9, 4, 1];
    for (const { statistic, pImproving, pWorsening } of tails) {
      expect(pImproving).toBeCloseTo(upperTails[statistic] ?? 0, 9);
      expect(pWorsening).toBeCloseTo(upperTails[6 - statistic] ?? 0, 9);
    }
    const counts = upperTails.map((_, pairs) => tails.filter(({ statistic }) => statistic === pairs).length);
    expect(counts).toEqual([1, 3, 5, 6, 5, 3, 1]);
  });
});

const TESTS = [
  { name: 'laplaceTrend', run: (history: EventHistory, level = 0.95) => laplaceTrend(history, { level }) },
  {
    name: 'militaryHandbookTrend',
    run: (history: EventHistory, level = 0.95) => militaryHandbookTrend(history, { level }),
  },
  {
    name: 'reverseArrangements',
    run: ({ events }: EventHistory, level = 0.95) => reverseArrangements(events, { level }),
  },
] as const;

describe.each(TESTS)('$name', ({ name, run }) => {
  it('says improving when gaps grow, worsening when they shrink, neither when they are mixed', () => {
    const growing = [3, 8, 15, 27, 44, 70, 110, 170, 260, 390, 580, 860];
    const shrinking = growing.map((event) => 1000 - event).toSorted((a, b) => a - b);
    const mixed = [60, 190, 240, 390, 450, 580, 640, 790, 860, 980];
    const directions = [growing, shrinking, mixed].map(
      (events) => answered(run({ stoppedAt: 'distance', events, end: 1000 })).direction,
    );
    expect(directions).toEqual(['improving', 'worsening', 'noTrend']);
  });

  it('never turns its direction against its chances, whatever the level', () => {
    const events = fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 4, maxLength: 20 });
    fc.assert(
      fc.property(
        events,
        fc.constantFrom(0.5, 0.8, 0.95),
        fc.constantFrom('distance', 'failure'),
        (seen, level, stop) => {
          const history: EventHistory =
            stop === 'distance'
              ? { stoppedAt: stop, events: seen, end: 500 }
              : { stoppedAt: stop, events: seen };
          const { direction, pImproving, pWorsening, pEither } = answered(run(frozen(history), level));
          for (const chance of [pImproving, pWorsening, pEither]) {
            expect(chance).toBeGreaterThanOrEqual(0);
            expect(chance).toBeLessThanOrEqual(1);
          }
          expect(pImproving + pWorsening).toBeGreaterThan(1 - 1e-12);
          expect(pEither).toBeCloseTo(Math.min(1, 2 * Math.min(pImproving, pWorsening)), 12);
          if (direction === 'improving') expect(pImproving).toBeLessThanOrEqual((1 - level) / 2);
          if (direction === 'worsening') expect(pWorsening).toBeLessThanOrEqual((1 - level) / 2);
          if (direction === 'noTrend') expect(pEither).toBeGreaterThan(1 - level);
        },
      ),
    );
  });

  it('does not depend on the order of the events nor on the unit of distance', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 4, maxLength: 20 }), (events) => {
        const seen = answered(run({ stoppedAt: 'distance', events, end: 500 }));
        expect(answered(run({ stoppedAt: 'distance', events: events.toReversed(), end: 500 }))).toEqual(seen);
        const doubled = {
          stoppedAt: 'distance',
          events: events.map((event) => 2 * event),
          end: 1000,
        } as const;
        expect(answered(run(doubled)).statistic).toBeCloseTo(seen.statistic, 10);
      }),
    );
  });

  it('refuses too few failures and throws on nonsense', () => {
    expect(refused(run({ stoppedAt: 'failure', events: [3, 5, 9] })).says).toBe(
      'Only 3 failures are known; a trend needs at least 4.',
    );
    expect(() => run({ stoppedAt: 'failure', events: [0, 1, 2, 3] })).toThrow(`${name}: an event must be`);
    expect(() => run({ stoppedAt: 'failure', events: [1, 2, 3, 4] }, 0)).toThrow(`${name}: level must be`);
  });
});

describe('the trend tests of a record that stopped at a failure', () => {
  it('leave the last failure out, as its place was not left to chance', () => {
    const events = [50, 120, 260, 400, 700];
    const stopped: EventHistory = { stoppedAt: 'failure', events };
    const same: EventHistory = { stoppedAt: 'distance', events: events.slice(0, -1), end: 700 };
    for (const run of [laplaceTrend, militaryHandbookTrend]) {
      expect(answered(run(stopped)).statistic).toBeCloseTo(answered(run(same)).statistic, 12);
      expect(answered(run(stopped)).failures).toBe(5);
    }
  });
});

describe('reverseArrangements', () => {
  it('counts equal gaps for neither direction', () => {
    const even = [10, 20, 30, 40, 50, 60];
    const seen = answered(reverseArrangements(even));
    expect(seen).toMatchObject({ statistic: 0, direction: 'noTrend' });
    expect(seen.pImproving).toBeCloseTo(1, 12);
    expect(seen.pWorsening).toBeCloseTo(1, 12);
  });

  it.each([
    [12, 1e-12],
    [50, 1e-12],
    // Beyond 50 failures by the normal approximation, which near the level is good to a few per cent.
    [51, 0.03],
    [80, 0.03],
  ])('agrees with the count over all orders of %i gaps to %f', (size, tolerance) => {
    const expected = (size * (size - 1)) / 4;
    const deviation = Math.sqrt(((2 * size + 5) * (size - 1) * size) / 72);
    for (const z of [-2, -1, 1.3, 2]) {
      const pairs = Math.round(expected + z * deviation);
      const gaps = orderWithPairs(size, pairs);
      const seen = answered(reverseArrangements(gaps.map((_, index) => sum(gaps.slice(0, index + 1)))));
      expect(seen.statistic).toBe(pairs);
      const chances = countedOrders(size).map((count) => count / factorial(size));
      expect(relativeError(seen.pImproving, sum(chances.slice(pairs)))).toBeLessThan(tolerance);
      expect(relativeError(seen.pWorsening, sum(chances.slice(0, pairs + 1)))).toBeLessThan(tolerance);
    }
  });
});

/** An order of the gaps 1 to n with this many longer later pairs: the k-th put at place p comes after p shorter ones. */
function orderWithPairs(size: number, pairs: number): number[] {
  let left = pairs;
  const places: number[] = [];
  for (let gap = size; gap >= 1; gap -= 1) {
    const place = Math.min(gap - 1, left);
    places.unshift(place);
    left -= place;
  }
  return places.reduce<number[]>((order, place, index) => order.toSpliced(place, 0, index + 1), []);
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}

function factorial(n: number): number {
  return n <= 1 ? 1 : n * factorial(n - 1);
}

function permutations<Item>(items: readonly Item[]): Item[][] {
  if (items.length <= 1) return [[...items]];
  return items.flatMap((item, index) =>
    permutations(items.filter((_, other) => other !== index)).map((rest) => [item, ...rest]),
  );
}

/** Orders of n gaps by number of pairs, from the product of 1 + x + … + x^(k-1) in whole numbers. */
function countedOrders(n: number): number[] {
  let counts = [1];
  for (let k = 2; k <= n; k += 1) {
    const next = new Array<number>(counts.length + k - 1).fill(0);
    for (const [pairs, count] of counts.entries()) {
      for (let more = 0; more < k; more += 1) next[pairs + more] = (next[pairs + more] ?? 0) + count;
    }
    counts = next;
  }
  return counts;
}
