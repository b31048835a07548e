import { describe, expect, it } from 'vitest';
import { answered, frozen, NIST_LIVES, observe, relativeError, SHOCK_LIVES, SHOCK_MODE_1 } from '../fixtures';
import { fitExponential } from './fit-exponential';
import { fitLognormal } from './fit-lognormal';
import { fitWeibull } from './fit-weibull';
import { fittedQuantile } from './fitted-quantile';
import { fittedSurvival } from './fitted-survival';

/**
 * NIST/SEMATECH e-Handbook 8.4.1.3 and the shock absorbers (O'Connor 1985; Meeker & Escobar 1998, table C.2). Numbers
 * computed with R, package survival: survreg(Surv(t, s) ~ 1, dist = "weibull").
 */
const PUBLISHED = [
  {
    name: 'NIST 8.4.1.3',
    lives: NIST_LIVES,
    shape: [1.72079726, 0.971266102, 3.04874556],
    scale: [606.527558, 405.089294, 908.134785],
    logLikelihood: -75.1346182,
    errors: [0.205943909, 0.291812763, 0.0271278424],
    tenPercent: [164.022439, 83.8751295, 320.754919],
    mean: 540.737025,
  },
  {
    name: 'shock absorbers, both modes',
    lives: SHOCK_LIVES,
    shape: [3.16047031, 2.00873307, 4.97257338],
    scale: [27718.7181, 22347.7702, 34380.4919],
    logLikelihood: -123.995361,
    errors: [0.109890478, 0.231237228, 0.01261167],
    tenPercent: [13600.0347, 10221.8418, 18094.6788],
    mean: 24811.5372,
  },
  {
    name: 'shock absorbers, mode 1',
    lives: SHOCK_MODE_1,
    shape: [3.38394623, 1.93165035, 5.92813918],
    scale: [31205.7979, 23350.0295, 41704.5223],
    logLikelihood: -81.4979764,
    errors: [0.147964791, 0.286060263, 0.0277613534],
    tenPercent: [16048.1115, 12067.2028, 21342.3016],
    mean: 28027.8792,
  },
] as const;

describe.each(PUBLISHED)('fitWeibull on $name', (published) => {
  const fit = answered(fitWeibull(frozen(observe(published.lives))));
  const near = (value: number, expected: number) => expect(relativeError(value, expected)).toBeLessThan(1e-6);

  it('finds shape and scale with their bounds', () => {
    for (const [estimate, [value, low, high]] of [
      [fit.shape, published.shape],
      [fit.scale, published.scale],
    ] as const) {
      near(estimate.value, value);
      near(estimate.wald.low, low);
      near(estimate.wald.high, high);
    }
  });

  it('finds likelihood, standard errors and mean', () => {
    near(fit.logLikelihood, published.logLikelihood);
    near(Math.sqrt(fit.variance.location), published.errors[0]);
    near(Math.sqrt(fit.variance.logSpread), published.errors[1]);
    near(fit.variance.both, published.errors[2]);
    near(fit.mean, published.mean);
  });

  it('finds the distance by which 10 % have failed, and back', () => {
    const { distance, bounds } = fittedQuantile(fit, 0.1);
    near(distance, published.tenPercent[0]);
    near(bounds.low, published.tenPercent[1]);
    near(bounds.high, published.tenPercent[2]);
    const { surviving, bounds: share } = fittedSurvival(fit, distance);
    near(surviving, 0.9);
    expect(share.low).toBeLessThan(0.9);
    expect(share.high).toBeGreaterThan(0.9);
  });
});

describe('the fits of the NIST example', () => {
  it('have the printed digits of NIST/SEMATECH e-Handbook 8.4.1.3', () => {
    const weibull = answered(fitWeibull(observe(NIST_LIVES)));
    expect(weibull.scale.value.toFixed(4)).toBe('606.5276');
    expect(weibull.shape.value.toFixed(4)).toBe('1.7208');
    expect(weibull.logLikelihood.toFixed(3)).toBe('-75.135');
    expect(weibull.akaike.toFixed(2)).toBe('154.27');
    expect(weibull.mean.toFixed(3)).toBe('540.737');
    expect(weibull.standardDeviation.toFixed(3)).toBe('323.806');
    expect(answered(fitLognormal(observe(NIST_LIVES))).akaike.toFixed(2)).toBe('154.39');
  });
});

describe('the other fits of the shock absorbers', () => {
  // Computed with R, package survival.
  it('gives the lognormal one', () => {
    const fit = answered(fitLognormal(observe(SHOCK_LIVES)));
    expect(relativeError(fit.location, 10.1447707)).toBeLessThan(1e-7);
    expect(relativeError(fit.spread, 0.53006803)).toBeLessThan(1e-7);
    expect(relativeError(fit.logLikelihood, -124.60855)).toBeLessThan(1e-7);
  });

  it('gives the exponential one', () => {
    const fit = answered(fitExponential(observe(SHOCK_LIVES)));
    expect(relativeError(fit.meanDistance.value, 625000 / 11)).toBeLessThan(1e-12);
    expect(relativeError(fit.logLikelihood, -131.423728)).toBeLessThan(1e-8);
  });
});
