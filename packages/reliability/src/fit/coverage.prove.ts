import { describe, it } from 'vitest';
import type { Chance } from '../exposure/scripted-route/fixtures';
import { drawWait, expectNominal, LEVEL, openShare, print, simulate } from '../simulated/fixtures';
import { normalQuantile } from '../special/normal-quantile';
import { fitExponential } from './fit-exponential';
import { fitLognormal } from './fit-lognormal';
import { fitWeibull } from './fit-weibull';
import { fittedQuantile } from './fitted-quantile';
import { fittedSurvival } from './fitted-survival';
import { ratioQuantile } from './ratio-quantile';
import { ratioSurvival } from './ratio-survival';
import type { LifeObservation } from './read-observations';

const HISTORIES = 1000;
const SCALE = 100;
const SHAPE = 2;
const DEVIATION = 0.6;
/** Where one in ten has failed. */
const B10 = {
  weibull: SCALE * (-Math.log(0.9)) ** (1 / SHAPE),
  lognormal: SCALE * Math.exp(DEVIATION * normalQuantile(0.1)),
};

/** So many lives; those beyond `end` were still good there. */
function watch(lives: number, end: number, draw: () => number): LifeObservation[] {
  return Array.from({ length: lives }, () => {
    const distance = draw();
    return distance <= end ? { kind: 'failedAt', distance } : { kind: 'goodAt', distance: end };
  });
}

const drawWeibull = (chance: Chance) => SCALE * drawWait(chance, 1) ** (1 / SHAPE);
const drawLognormal = (chance: Chance) => SCALE * Math.exp(DEVIATION * normalQuantile(openShare(chance)));

function boundsOfWeibull(seen: readonly LifeObservation[]) {
  const fit = fitWeibull(seen, { level: LEVEL });
  if (!fit.ok) return null;
  const { shape, scale } = fit;
  return {
    ratio: {
      shape: { truth: SHAPE, bounds: shape.likelihoodRatio },
      scale: { truth: SCALE, bounds: scale.likelihoodRatio },
      B10: { truth: B10.weibull, bounds: ratioQuantile(seen, fit, 0.1, { level: LEVEL }).bounds },
      'share good at B10': {
        truth: 0.9,
        bounds: ratioSurvival(seen, fit, B10.weibull, { level: LEVEL }).bounds,
      },
    },
    wald: {
      'shape, Wald': { truth: SHAPE, bounds: shape.wald },
      'scale, Wald': { truth: SCALE, bounds: scale.wald },
      'B10, Wald': { truth: B10.weibull, bounds: fittedQuantile(fit, 0.1, { level: LEVEL }).bounds },
      'share good at B10, Wald': {
        ...{ truth: 0.9, bounds: fittedSurvival(fit, B10.weibull, { level: LEVEL }).bounds },
      },
    },
  };
}

function boundsOfLognormal(seen: readonly LifeObservation[]) {
  const fit = fitLognormal(seen, { level: LEVEL });
  if (!fit.ok) return null;
  const { median, logDeviation } = fit;
  return {
    ratio: {
      median: { truth: SCALE, bounds: median.likelihoodRatio },
      deviation: { truth: DEVIATION, bounds: logDeviation.likelihoodRatio },
      B10: { truth: B10.lognormal, bounds: ratioQuantile(seen, fit, 0.1, { level: LEVEL }).bounds },
    },
    wald: {
      'median, Wald': { truth: SCALE, bounds: median.wald },
      'deviation, Wald': { truth: DEVIATION, bounds: logDeviation.wald },
      'B10, Wald': { truth: B10.lognormal, bounds: fittedQuantile(fit, 0.1, { level: LEVEL }).bounds },
    },
  };
}

function boundsOfExponential(seen: readonly LifeObservation[]) {
  const fit = fitExponential(seen, { level: LEVEL });
  if (!fit.ok) return null;
  const { likelihoodRatio, wald } = fit.meanDistance;
  return {
    ratio: { mean: { truth: SCALE, bounds: likelihoodRatio } },
    wald: { 'mean, Wald': { truth: SCALE, bounds: wald } },
  };
}

const DISTRIBUTIONS = [
  ['Weibull', drawWeibull, boundsOfWeibull],
  ['lognormal', drawLognormal, boundsOfLognormal],
  ['exponential', (chance: Chance) => SCALE * drawWait(chance, 1), boundsOfExponential],
] as const;

describe.each(DISTRIBUTIONS)('bounds of a fitted life, %s', (name, draw, boundsOf) => {
  // With 20 and more; 40 lives of which about half had failed when the log ended.
  it.each([
    [20, Infinity],
    [40, SCALE],
  ])('%i lives watched to %d: by the likelihood ratio as often as asked', (lives, end) => {
    const ratio = simulate(lives, HISTORIES, (chance) => {
      return boundsOf(watch(lives, end, () => draw(chance)))?.ratio ?? null;
    });
    print(`${name}, ${lives} lives to ${end}`, ratio);
    expectNominal(ratio);
  });

  it.each([6, 20])('%i lives: all of them, printed', (lives) => {
    const both = simulate(1000 + lives, HISTORIES, (chance) => {
      const bounds = boundsOf(watch(lives, Infinity, () => draw(chance)));
      return bounds && { ...bounds.ratio, ...bounds.wald };
    });
    print(`${name}, ${lives} lives`, both);
  });
});
