import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, frozen, refused, relativeError, VALVE_SEATS } from '../fixtures';
import { stepAt } from '../survival/step-at';
import { meanCumulative } from './mean-cumulative';

describe('meanCumulative on the valve seats of 41 engines (Nelson 1995, Technometrics 37:147-157)', () => {
  const result = answered(meanCumulative(frozen(VALVE_SEATS)));

  it('has all of the data', () => {
    expect(result).toMatchObject({ units: 41, events: 48 });
    expect(VALVE_SEATS.reduce((sum, { end }) => sum + end, 0)).toBe(25363);
  });

  // Robust and Poisson errors computed with R; they agree with survfit(..., robust = TRUE) of package survival.
  it.each([
    [61, 41, 0.02439024, 0.02409097, 0.02439024],
    [98, 41, 0.14634146, 0.05519934, 0.05974365],
    [139, 41, 0.2195122, 0.07326981, 0.07317073],
    [206, 41, 0.31707317, 0.08752683, 0.08794028],
    [298, 41, 0.46341463, 0.10960728, 0.10631461],
    [349, 41, 0.6097561, 0.12378162, 0.12195122],
    [377, 41, 0.65853659, 0.13184165, 0.12673542],
    [404, 40, 0.68353659, 0.13593896, 0.12917766],
    [497, 40, 0.80853659, 0.14925494, 0.14075464],
    [573, 40, 0.95853659, 0.16895814, 0.15349876],
    [581, 38, 0.98485237, 0.1712036, 0.15573821],
    [604, 22, 1.05971868, 0.18506099, 0.16488043],
    [640, 16, 1.24354221, 0.22632442, 0.19610779],
    [653, 9, 1.54268751, 0.31165607, 0.2628056],
  ])('gives mean and errors on day %i', (day, atRisk, mean, robust, poisson) => {
    const step = stepAt(result.steps, day);
    expect(step).toMatchObject({ distance: day, atRisk });
    expect(relativeError(step?.mean ?? 0, mean)).toBeLessThan(2e-7);
    expect(relativeError(step?.standardError ?? 0, robust)).toBeLessThan(5e-7);
    expect(relativeError(step?.poissonError ?? 0, poisson)).toBeLessThan(5e-7);
  });

  it('counts both events where one engine had two on a day', () => {
    expect(stepAt(result.steps, 139)).toMatchObject({ distance: 139, events: 2 });
    expect(stepAt(result.steps, 653)).toMatchObject({ distance: 653, events: 2 });
  });
});

const someUnits = fc
  .array(
    fc.integer({ min: 1, max: 50 }).chain((end) =>
      fc.record({
        end: fc.constant(end),
        events: fc.array(fc.integer({ min: 0, max: end }), { maxLength: 6 }),
      }),
    ),
    { minLength: 1, maxLength: 12 },
  )
  .filter((units) => units.some(({ events }) => events.length > 0));

describe('meanCumulative', () => {
  it('is the count of events so far for one unit, whose spread among units it cannot know', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 1 }), (events) => {
        for (const step of answered(meanCumulative([{ events, end: 50 }])).steps) {
          expect(step.mean).toBe(events.filter((event) => event <= step.distance).length);
          expect(step).toMatchObject({ standardError: null, bounds: null });
        }
      }),
    );
  });

  it('is the plain mean of the counts, with their standard deviation, when all are watched equally far', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.integer({ min: 0, max: 20 }), { maxLength: 5 }), {
          minLength: 2,
          maxLength: 10,
        }),
        (histories) => {
          fc.pre(histories.some((events) => events.length > 0));
          const { steps } = answered(meanCumulative(histories.map((events) => ({ events, end: 20 }))));
          const last = steps.at(-1);
          const mean = histories.reduce((sum, events) => sum + events.length, 0) / histories.length;
          const squares = histories.reduce((sum, events) => sum + (events.length - mean) ** 2, 0);
          expect(last?.mean).toBeCloseTo(mean, 12);
          expect(last?.standardError).toBeCloseTo(Math.sqrt(squares) / histories.length, 12);
        },
      ),
    );
  });

  it('does not depend on the order of units or events nor on the unit of distance', () => {
    fc.assert(
      fc.property(someUnits, (units) => {
        const { steps } = answered(meanCumulative(frozen(units)));
        const turned = units.map(({ events, end }) => ({ events: events.toReversed(), end })).toReversed();
        const halved = units.map(({ events, end }) => ({ events: events.map((e) => e / 2), end: end / 2 }));
        for (const [index, step] of steps.entries()) {
          expect(answered(meanCumulative(turned)).steps[index]?.mean).toBeCloseTo(step.mean, 12);
          const half = answered(meanCumulative(halved)).steps[index];
          expect(half).toMatchObject({ distance: step.distance / 2, mean: step.mean, atRisk: step.atRisk });
        }
      }),
    );
  });

  it('rises, and its bounds hold it and widen with the level', () => {
    fc.assert(
      fc.property(someUnits, (units) => {
        const narrow = answered(meanCumulative(units, { level: 0.5 })).steps;
        const wide = answered(meanCumulative(units, { level: 0.99 })).steps;
        let before = 0;
        for (const [index, { mean, bounds }] of narrow.entries()) {
          expect(mean).toBeGreaterThan(before);
          before = mean;
          const wider = wide[index]?.bounds;
          if (!bounds || !wider) continue;
          const ends = [wider.low, bounds.low, mean, bounds.high, wider.high];
          expect(ends).toEqual(ends.toSorted((a, b) => a - b));
        }
      }),
    );
  });

  it('refuses when nothing happened, and throws on an event beyond the end', () => {
    expect(refused(meanCumulative([])).reason).toBe('noUnits');
    expect(refused(meanCumulative([{ events: [], end: 10 }])).reason).toBe('noEvents');
    expect(() => meanCumulative([{ events: [11], end: 10 }])).toThrow('an event at 11 lies beyond the end');
    expect(() => meanCumulative([{ events: [-1], end: 10 }])).toThrow('meanCumulative: an event must be');
  });
});
