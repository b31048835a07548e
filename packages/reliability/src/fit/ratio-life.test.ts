import { describe, expect, it } from 'vitest';
import { answered, frozen, NIST_LIVES, observe } from '../fixtures';
import { curveOf } from './curve-of';
import { fitExponential } from './fit-exponential';
import { fitLognormal } from './fit-lognormal';
import { fitWeibull } from './fit-weibull';
import { fittedQuantile } from './fitted-quantile';
import { logLikelihood } from './log-likelihood';
import { ratioQuantile } from './ratio-quantile';
import { ratioSurvival } from './ratio-survival';
import { readObservations } from './read-observations';

const lives = frozen(observe(NIST_LIVES));
const fits = [fitWeibull(lives), fitLognormal(lives), fitExponential(lives)].map(answered);
const weibull = answered(fitWeibull(lives));

/** The slow way: on a fine net of spreads, the best likelihood with this share failed by this distance. */
function bestOnNet(distance: number, failedShare: number): number {
  const curve = curveOf(weibull);
  const logLives = readObservations('test', lives);
  const net = Array.from({ length: 4001 }, (_, index) => Math.log(weibull.spread) + (index - 2000) / 1000);
  return Math.max(
    ...net.map((logSpread) => {
      const location = Math.log(distance) - Math.exp(logSpread) * curve.quantile(failedShare);
      return logLikelihood(logLives, curve, location, logSpread).value;
    }),
  );
}

/** Half the 95 % quantile of chi-square with one degree of freedom: 3.841458821 (Abramowitz & Stegun 1964, table 26.8). */
const ALLOWED = 3.841458821 / 2;

describe('ratioQuantile', () => {
  it('ends where the best likelihood has dropped by half a chi-square quantile', () => {
    const { distance, bounds } = ratioQuantile(lives, weibull, 0.1);
    expect(distance).toBe(fittedQuantile(weibull, 0.1).distance);
    for (const end of [bounds.low, bounds.high ?? 0]) {
      expect(weibull.logLikelihood - bestOnNet(end, 0.1)).toBeCloseTo(ALLOWED, 4);
    }
    expect(bounds.low).toBeLessThan(distance);
    expect(bounds.high).toBeGreaterThan(distance);
  });

  it('is the bounds of the scale at the share 1 − 1/e, and follows the mean of an exponential life', () => {
    const { bounds } = ratioQuantile(lives, weibull, 1 - Math.exp(-1));
    expect(bounds.low).toBeCloseTo(weibull.scale.likelihoodRatio.low, 4);
    expect(bounds.high).toBeCloseTo(weibull.scale.likelihoodRatio.high ?? 0, 4);
    const exponential = answered(fitExponential(lives));
    const half = ratioQuantile(lives, exponential, 0.5).bounds;
    expect(half.low).toBeCloseTo(exponential.meanDistance.likelihoodRatio.low * Math.LN2, 5);
  });

  it('refuses a share or a level that is none', () => {
    expect(() => ratioQuantile(lives, weibull, 1)).toThrow(/share/);
    expect(() => ratioQuantile(lives, weibull, 0.1, { level: 1 })).toThrow(/level/);
  });
});

describe('ratioSurvival', () => {
  it.each(fits.map((fit) => [fit.distribution, fit] as const))(
    'is the reverse of ratioQuantile: %s',
    (_, fit) => {
      const { distance, bounds } = ratioQuantile(lives, fit, 0.3);
      expect(ratioSurvival(lives, fit, distance).surviving).toBeCloseTo(0.7, 8);
      expect(ratioSurvival(lives, fit, bounds.low).bounds.low).toBeCloseTo(0.7, 5);
      expect(ratioSurvival(lives, fit, bounds.high ?? 0).bounds.high).toBeCloseTo(0.7, 5);
    },
  );

  it('stays within 0 and 1 far out on both sides, and is wider at a higher level', () => {
    for (const distance of [0.01, 1, 200, 5000, 1e7]) {
      const { surviving, bounds } = ratioSurvival(lives, weibull, distance);
      expect(bounds.low).toBeGreaterThanOrEqual(0);
      expect(bounds.high).toBeLessThanOrEqual(1);
      expect(bounds.low).toBeLessThanOrEqual(surviving);
      expect(bounds.high).toBeGreaterThanOrEqual(surviving);
    }
    const [wide, narrow] = [0.99, 0.8].map((level) => ratioSurvival(lives, weibull, 300, { level }).bounds);
    expect(wide?.low).toBeLessThan(narrow?.low ?? 0);
    expect(() => ratioSurvival(lives, weibull, 0)).toThrow(/distance/);
  });
});
