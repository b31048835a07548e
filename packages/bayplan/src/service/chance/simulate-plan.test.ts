import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Chance } from '../../search/chance';
import type { ThreePoint } from '../../times/three-point';
import type { BayPlan, PlannedWork } from '../bay-plan';
import { anyService } from '../fixtures';
import { orderOf, pushStarts } from '../order/push-starts';
import { openPlanning } from '../search/open-planning';
import type { Service, ServiceTask } from '../service-model';
import { drawGamma, durationSource } from './draw-duration';
import { lateMinutes, simulatePlan } from './simulate-plan';

const HOURS = [{ from: 0, until: 1000 }];

function task(id: string, duration: ThreePoint, more: Partial<ServiceTask> = {}): ServiceTask {
  return {
    id,
    car: 'car',
    mandatory: true,
    ways: [{ id: 'usual', duration, crew: [{ count: 1 }] }],
    ...more,
  };
}

function serviceOf(tasks: readonly ServiceTask[], outTime: number, more: Partial<Service> = {}): Service {
  return {
    cars: [{ id: 'car', inTime: 0, outTime, latest: outTime + 30 }],
    people: ['Ada', 'Ben'].map((id) => ({ id, skills: [], hours: HOURS })),
    places: [],
    tools: [],
    accesses: [],
    tasks,
    ...more,
  };
}

function planOf(...work: readonly (readonly [string, number, number, string])[]): BayPlan {
  return {
    work: work.map(([id, start, finish, person]): PlannedWork => {
      return { task: id, way: 'usual', start, finish, people: [{ person }] };
    }),
    left: [],
    objective: { late: 0, value: 0, finish: 0, handOvers: 0 },
  };
}

/** With likely in the middle the shapes are 3 and 3: the share below is x³ (10 − 15x + 6x²). */
const MIDDLE = { low: 10, likely: 20, high: 30 };

function shareBelow(duration: number): number {
  const x = Math.min(1, Math.max(0, (duration - MIDDLE.low) / (MIDDLE.high - MIDDLE.low)));
  return x ** 3 * (10 - 15 * x + 6 * x * x);
}

/** E max = high − ∫ F² of two alike, by the midpoint rule. */
function meanOfLongest(): number {
  const steps = 10_000;
  const width = (MIDDLE.high - MIDDLE.low) / steps;
  let area = 0;
  for (let step = 0; step < steps; step += 1) {
    area += width * shareBelow(MIDDLE.low + (step + 0.5) * width) ** 2;
  }
  return MIDDLE.high - area;
}

describe('durationSource', () => {
  it('has the mean, the variance and the shares of its beta distribution', () => {
    const chance = new Chance(1);
    // Likely is low: shapes 1 and 5, mean 1/6, variance 5/252, and P(x ≤ 0.2) = 1 − 0.8⁵.
    const draw = durationSource({ low: 0, likely: 0, high: 1 });
    const drawn = Array.from({ length: 40_000 }, () => draw(chance));
    const mean = drawn.reduce((sum, one) => sum + one, 0) / drawn.length;
    const variance = drawn.reduce((sum, one) => sum + (one - mean) ** 2, 0) / drawn.length;
    // Standard errors: 0.0007 of the mean, about 0.0002 of the variance, 0.0024 of the share.
    expect(Math.abs(mean - 1 / 6)).toBeLessThan(0.003);
    expect(Math.abs(variance - 5 / 252)).toBeLessThan(0.001);
    expect(Math.abs(drawn.filter((one) => one <= 0.2).length / drawn.length - (1 - 0.8 ** 5))).toBeLessThan(
      0.01,
    );
  });

  it('draws gamma variates with mean and variance equal to the shape', () => {
    const chance = new Chance(2);
    const drawn = Array.from({ length: 40_000 }, () => drawGamma(3.5, chance));
    const mean = drawn.reduce((sum, one) => sum + one, 0) / drawn.length;
    const variance = drawn.reduce((sum, one) => sum + (one - mean) ** 2, 0) / drawn.length;
    expect(Math.abs(mean - 3.5)).toBeLessThan(0.04);
    expect(Math.abs(variance - 3.5)).toBeLessThan(0.15);
  });

  it('takes one number as it is, and refuses points in the wrong order', () => {
    expect(durationSource({ low: 4, likely: 4, high: 4 })(new Chance(1))).toBe(4);
    expect(() => durationSource({ low: 4, likely: 3, high: 5 })).toThrow('never get smaller');
  });
});

describe('simulatePlan', () => {
  it('adds up means and variances along a chain', () => {
    const points = [MIDDLE, { low: 5, likely: 6, high: 15 }, { low: 2, likely: 2, high: 8 }];
    const tasks = points.map((one, number) => task(`t${number}`, one));
    const plan = planOf(['t0', 0, 20, 'Ada'], ['t1', 20, 28, 'Ada'], ['t2', 28, 31, 'Ada']);
    const { cars } = simulatePlan(serviceOf(tasks, 40), plan, { seed: 3, runs: 20_000 });
    const finishes = [...(cars[0]?.finishes ?? [])];
    const mean = finishes.reduce((sum, one) => sum + one, 0) / finishes.length;
    const variance = finishes.reduce((sum, one) => sum + (one - mean) ** 2, 0) / finishes.length;
    const means = points.map(({ low, likely, high }) => (low + 4 * likely + high) / 6);
    // A beta distribution with shapes that add up to 6 has the variance (mean − low) (high − mean) / 7.
    const variances = points.map(
      ({ low, high }, number) => (((means[number] ?? 0) - low) * (high - (means[number] ?? 0))) / 7,
    );
    const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
    expect(Math.abs(mean - sum(means))).toBeLessThan(0.15);
    expect(Math.abs(variance - sum(variances))).toBeLessThan(0.8);
    expect(cars[0]?.spare.mean).toBeCloseTo(40 - mean, 9);
  });

  it('waits for the longer of two that run side by side, as quadrature has it', () => {
    const service = serviceOf([task('one', MIDDLE), task('other', MIDDLE)], 24);
    const plan = planOf(['one', 0, 20, 'Ada'], ['other', 0, 20, 'Ben']);
    const { cars, anyLateChance } = simulatePlan(service, plan, { seed: 4, runs: 20_000 });
    expect(Math.abs((cars[0]?.spare.mean ?? 0) - (24 - meanOfLongest()))).toBeLessThan(0.1);
    const late = 1 - shareBelow(24) ** 2;
    expect(Math.abs((cars[0]?.lateChance ?? 0) - late)).toBeLessThan(0.015);
    expect(anyLateChance).toBe(cars[0]?.lateChance);
    // In nine of ten runs both are done by where F² = 0.9.
    const worst = 24 - (cars[0]?.spare.likelyWorst ?? 0);
    expect(Math.abs(shareBelow(worst) ** 2 - 0.9)).toBeLessThan(0.01);
  });

  it('spreads lateness over whole minutes, and counts what is past the latest', () => {
    const service = serviceOf([task('one', { low: 100, likely: 160, high: 220 })], 120, {
      cars: [{ id: 'car', inTime: 0, outTime: 120, latest: 180 }],
    });
    const { cars } = simulatePlan(service, planOf(['one', 0, 160, 'Ada']), { seed: 5, runs: 4000 });
    const [car] = cars;
    if (!car) throw new Error('There is a car.');
    const shares = lateMinutes(car, 60);
    expect(shares.length).toBe(2);
    expect(shares.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
    // F(180): two thirds of the way, (2/3)³ (10 − 10 + 24/9) = 0.790.
    expect(Math.abs((shares[0] ?? 0) - 0.79)).toBeLessThan(0.03);
    expect(car.tooLateChance).toBeCloseTo(shares[1] ?? 0, 9);
    expect(car.meanLate).toBeGreaterThan(0);
  });

  it('waits for who is away, keeps what is under way, and notices what waited too long', () => {
    const sure = (minutes: number) => ({ low: minutes, likely: minutes, high: minutes });
    const service = serviceOf(
      [
        task('glue', sure(2), { underWay: { since: 0, until: 7, way: 'usual', people: ['Ada'] } }),
        task('press', sure(1), { after: [{ task: 'glue', lag: 1, maxLag: 2 }] }),
      ],
      20,
      {
        people: [
          { id: 'Ada', skills: [], hours: HOURS },
          { id: 'Ben', skills: [], hours: [{ from: 12, until: 30 }] },
        ],
      },
    );
    const outlook = simulatePlan(service, planOf(['glue', 0, 7, 'Ada'], ['press', 12, 13, 'Ben']), {
      seed: 1,
      runs: 5,
    });
    expect([...(outlook.cars[0]?.finishes ?? [])]).toEqual([13, 13, 13, 13, 13]);
    expect(outlook.waitedTooLongChance).toBe(1);
    expect(outlook.anyLateChance).toBe(0);
  });

  it('repeats itself for a seed, and never finishes later than planned when all takes its planned time', () => {
    let plans = 0;
    fc.assert(
      fc.property(anyService({ most: 6 }), fc.nat(), (service, seed) => {
        const { plan } = openPlanning(service, { seed }).step(60);
        if (!plan) return;
        plans += 1;
        const options = { seed, runs: 20 };
        expect(simulatePlan(service, plan, options)).toEqual(simulatePlan(service, plan, options));
        const order = orderOf(service, plan);
        const starts = new Float64Array(order.work.length);
        pushStarts(
          order,
          Float64Array.from(order.work, ({ work }) => work.finish - work.start),
          starts,
        );
        for (const [place, { work }] of order.work.entries())
          expect(starts[place]).toBeLessThanOrEqual(work.start);
      }),
      { numRuns: 100 },
    );
    expect(plans).toBeGreaterThan(8);
  });

  it('refuses broken options', () => {
    expect(() => simulatePlan(serviceOf([], 1), planOf(), { seed: 1, runs: 0 })).toThrow('the runs from 1');
  });
});
