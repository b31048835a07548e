import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, frozen, refused } from '../fixtures';
import { fitExponential } from './fit-exponential';
import { fitLognormal } from './fit-lognormal';
import { fitWeibull } from './fit-weibull';
import { fittedQuantile } from './fitted-quantile';
import { fittedSurvival } from './fitted-survival';
import { logLikelihood } from './log-likelihood';
import { type LifeObservation, readObservations } from './read-observations';
import { NORMAL, SMALLEST_EXTREME } from './standard-curve';

const distance = fc.integer({ min: 1, max: 2000 });
const failedAt = fc.record({ kind: fc.constant('failedAt' as const), distance });
const notExact: fc.Arbitrary<LifeObservation> = fc.oneof(
  fc.record({ kind: fc.constant('goodAt' as const), distance }),
  fc.record({ kind: fc.constant('failedBefore' as const), distance }),
  fc
    .tuple(distance, fc.integer({ min: 1, max: 500 }))
    .map(([after, more]) => ({ kind: 'failedBetween' as const, after, before: after + more })),
);
/** At least three failures known exactly, not all at one place: then the likelihood always has a top. */
const someLives: fc.Arbitrary<LifeObservation[]> = fc
  .tuple(
    fc
      .array(failedAt, { minLength: 3, maxLength: 15 })
      .filter((failures) => new Set(failures.map((failure) => failure.distance)).size > 1),
    fc.array(notExact, { maxLength: 10 }),
  )
  .map(([failures, others]) => [...failures, ...others]);

const FITS = [
  { name: 'fitWeibull', fit: fitWeibull, curve: SMALLEST_EXTREME },
  { name: 'fitLognormal', fit: fitLognormal, curve: NORMAL },
  { name: 'fitExponential', fit: fitExponential, curve: SMALLEST_EXTREME },
] as const;

describe.each(FITS)('$name', ({ name, fit, curve }) => {
  it('finds a place from which the likelihood falls in every direction', () => {
    fc.assert(
      fc.property(someLives, (observations) => {
        const found = answered(fit(frozen(observations)));
        const lives = readObservations('test', observations);
        for (const [along, up] of [
          [1, 0],
          [-1, 0],
          [0, 1],
          [0, -1],
          [1, 1],
          [1, -1],
          [-1, 1],
          [-1, -1],
        ] as const) {
          if (name === 'fitExponential' && up !== 0) continue;
          for (const size of [1e-3, 0.3]) {
            const place = found.location + along * size * found.spread;
            const { value } = logLikelihood(lives, curve, place, Math.log(found.spread) + up * size);
            expect(value).toBeLessThanOrEqual(found.logLikelihood + 1e-9);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('does not depend on the order of the lives, and follows the unit of distance', () => {
    fc.assert(
      fc.property(someLives, (observations) => {
        const found = answered(fit(observations));
        const turned = answered(fit(observations.toReversed()));
        const inMiles = answered(fit(observations.map((seen) => scale(seen, 1 / 1.609344))));
        expect(turned.location).toBeCloseTo(found.location, 8);
        expect(turned.spread / found.spread).toBeCloseTo(1, 7);
        expect(inMiles.location).toBeCloseTo(found.location - Math.log(1.609344), 8);
        expect(inMiles.spread / found.spread).toBeCloseTo(1, 7);
        expect(fittedQuantile(inMiles, 0.1).distance * 1.609344).toBeCloseTo(
          fittedQuantile(found, 0.1).distance,
          4,
        );
      }),
      { numRuns: 40 },
    );
  });

  it('has bounds around its estimates that widen with the level', () => {
    fc.assert(
      fc.property(someLives, (observations) => {
        const narrow = estimatesOf(answered(fit(observations, { level: 0.5 })));
        const wide = estimatesOf(answered(fit(observations, { level: 0.95 })));
        for (const [index, { value, wald, likelihoodRatio }] of narrow.entries()) {
          const wider = wide[index];
          if (!wider) throw new Error('Both levels have the same estimates.');
          expectOrder([wider.wald.low, wald.low, value, wald.high, wider.wald.high]);
          expectOrder([wider.likelihoodRatio.low, likelihoodRatio.low, value]);
          expectOrder([value, likelihoodRatio.high ?? Infinity, wider.likelihoodRatio.high ?? Infinity]);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('has a survival that falls with distance, between bounds that stay between 0 and 1', () => {
    fc.assert(
      fc.property(someLives, distance, (observations, at) => {
        const found = answered(fit(observations));
        const { surviving, bounds } = fittedSurvival(found, at);
        expectOrder([0, bounds.low, surviving, bounds.high, 1]);
        expect(fittedSurvival(found, at * 2).surviving).toBeLessThanOrEqual(surviving);
        const half = fittedQuantile(found, 0.5);
        expect(fittedSurvival(found, half.distance).surviving).toBeCloseTo(0.5, 9);
        expect(fittedQuantile(found, 0.6).distance).toBeGreaterThan(half.distance);
      }),
      { numRuns: 40 },
    );
  });

  it('refuses too few failures in a sentence', () => {
    const lives = [{ kind: 'goodAt', distance: 10 }] as const;
    expect(refused(fit(lives)).says).toMatch(/^Only 0 failures are known; a fit needs at least [13]\.$/);
    expect(refused(fit([]))).toMatchObject({ reason: 'tooFewFailures' });
    expect(refused(fit([...lives, { kind: 'failedAt', distance: 4 }], { fewestFailures: 2 })).says).toBe(
      'Only 1 failure is known; a fit needs at least 2.',
    );
  });

  it('throws a sentence with its name on nonsense', () => {
    expect(() => fit([{ kind: 'failedAt', distance: 0 }])).toThrow(
      `${name}: the distance of a failure (one at 0 is given as failedBefore) must be a number above 0, not 0.`,
    );
    expect(() => fit([{ kind: 'goodAt', distance: -1 }])).toThrow(RangeError);
    expect(() => fit([{ kind: 'failedBetween', after: 20, before: 20 }])).toThrow('has no room');
    expect(() => fit([], { level: 1 })).toThrow(`${name}: level must be`);
  });
});

describe('the fits, where the answer is known in closed form', () => {
  const failures = [40, 90, 160, 210, 330].map((at) => ({ kind: 'failedAt', distance: at }) as const);

  it('gives the lognormal one the mean and deviation of the logarithms', () => {
    const logs = failures.map((failure) => Math.log(failure.distance));
    const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
    const deviation = Math.sqrt(logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / logs.length);
    const fit = answered(fitLognormal(failures));
    expect(fit.location).toBeCloseTo(mean, 12);
    expect(fit.logDeviation.value).toBeCloseTo(deviation, 12);
    expect(fit.variance.location).toBeCloseTo(deviation ** 2 / 5, 12);
    expect(fit.variance.logSpread).toBeCloseTo(1 / 10, 12);
  });

  it('gives the exponential one all distance over all failures, with the likelihood-ratio bounds of that', () => {
    const fit = answered(fitExponential([...failures, { kind: 'goodAt', distance: 400 }], { level: 0.9 }));
    expect(fit.meanDistance.value).toBeCloseTo(1230 / 5, 10);
    const { low, high } = fit.meanDistance.likelihoodRatio;
    const drop = (mean: number) => 2 * (5 * Math.log(mean / 246) + 1230 / mean - 5);
    // The 90 % point of chi-square with one degree of freedom (Abramowitz & Stegun 1964, table 26.8: 2.70554).
    expect(drop(low)).toBeCloseTo(2.70554, 5);
    expect(drop(high ?? 0)).toBeCloseTo(2.70554, 5);
    expect(low).toBeLessThan(246);
    expect(high).toBeGreaterThan(246);
  });

  it('gives the share found failed at one look, when the exponential knows nothing else', () => {
    const looks = [
      ...new Array(3).fill({ kind: 'failedBefore', distance: 100 }),
      ...new Array(7).fill({ kind: 'goodAt', distance: 100 }),
    ];
    const fit = answered(fitExponential(looks));
    expect(fittedSurvival(fit, 100).surviving).toBeCloseTo(0.7, 12);
    // The binomial likelihood of 3 in 10.
    expect(fit.logLikelihood).toBeCloseTo(3 * Math.log(0.3) + 7 * Math.log(0.7), 12);
  });

  it('comes to the exact failures when the looks come closer and closer', () => {
    const exact = answered(fitWeibull(failures));
    const looked = answered(
      fitWeibull(
        failures.map((failure) => ({
          kind: 'failedBetween',
          after: failure.distance - 0.01,
          before: failure.distance + 0.01,
        })),
      ),
    );
    expect(looked.shape.value).toBeCloseTo(exact.shape.value, 5);
    expect(looked.scale.value).toBeCloseTo(exact.scale.value, 4);
  });
});

describe('fits that the lives cannot carry', () => {
  const at = (distances: number[]) =>
    distances.map((each) => ({ kind: 'failedAt', distance: each }) as const);

  it('refuses lives that could all have ended at one distance', () => {
    expect(refused(fitWeibull(at([80, 80, 80]))).reason).toBe('noSpread');
    expect(refused(fitLognormal([...at([80, 80, 80]), { kind: 'goodAt', distance: 60 }])).reason).toBe(
      'noSpread',
    );
    const found = new Array(4).fill({ kind: 'failedBefore', distance: 50 });
    expect(refused(fitExponential(found)).reason).toBe('noSpread');
  });

  it('refuses a likelihood without a top: the early look found all failed, the late one none', () => {
    const looks: LifeObservation[] = [
      ...new Array(3).fill({ kind: 'failedBefore', distance: 5 }),
      ...new Array(3).fill({ kind: 'goodAt', distance: 10 }),
    ];
    expect(refused(fitWeibull(looks)).reason).toBe('notSettled');
    expect(refused(fitLognormal(looks)).reason).toBe('notSettled');
  });

  it('throws on a question about a fit that makes no sense', () => {
    const fit = answered(fitWeibull(at([10, 20, 30])));
    expect(() => fittedQuantile(fit, 1)).toThrow('fittedQuantile: the failed share must be');
    expect(() => fittedSurvival(fit, 0)).toThrow('fittedSurvival: distance must be');
  });
});

function scale(seen: LifeObservation, factor: number): LifeObservation {
  return seen.kind === 'failedBetween'
    ? { ...seen, after: seen.after * factor, before: seen.before * factor }
    : { ...seen, distance: seen.distance * factor };
}

function estimatesOf(fit: ReturnType<typeof fitWeibull | typeof fitLognormal | typeof fitExponential>) {
  const found = answered(fit);
  if (found.distribution === 'weibull') return [found.shape, found.scale];
  return found.distribution === 'lognormal' ? [found.median, found.logDeviation] : [found.meanDistance];
}

function expectOrder(values: readonly number[]): void {
  for (const [index, value] of values.entries()) {
    const before = values[index - 1];
    if (before !== undefined) expect(value).toBeGreaterThanOrEqual(before - 1e-9 * Math.abs(before));
  }
}
