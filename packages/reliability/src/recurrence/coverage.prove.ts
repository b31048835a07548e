import { describe, it } from 'vitest';
import { stopRates } from '../field/stop-rates';
import { answered } from '../fixtures';
import {
  drawPowerLaw,
  drawWait,
  expectAtLeast,
  expectNominal,
  LEVEL,
  print,
  simulate,
} from '../simulated/fixtures';
import { distanceBetweenFailures } from './distance-between-failures';
import { meanCumulative } from './mean-cumulative';

const HISTORIES = 20_000;
const MEAN = 100;

describe('bounds of a count', () => {
  it.each([1, 3, 20])(
    'stopped at failure %i, hold the mean distance as often as asked: exact',
    (failures) => {
      const held = simulate(failures, HISTORIES, (chance) => {
        const waits = Array.from({ length: failures }, () => drawWait(chance, 1 / MEAN));
        const distance = waits.reduce((sum, wait) => sum + wait, 0);
        const { bounds } = answered(
          distanceBetweenFailures({ distance, failures, stoppedAt: 'failure' }, { level: LEVEL }),
        );
        return { mean: { truth: MEAN, bounds } };
      });
      print(`chi-square, stopped at failure ${failures}`, held);
      expectNominal(held);
    },
  );

  it.each([0.5, 3, 20])('stopped at a distance with %d expected, hold at least as often', (expected) => {
    const distance = expected * MEAN;
    const held = simulate(100 + expected, HISTORIES, (chance) => {
      const failures = drawPowerLaw(chance, { rate: 1 / MEAN, shape: 1, end: distance }).length;
      const { bounds } = answered(
        distanceBetweenFailures(
          { distance, failures, stoppedAt: 'distance' },
          { level: LEVEL, sided: 'two' },
        ),
      );
      return { mean: { truth: MEAN, bounds } };
    });
    print(`chi-square, stopped at a distance with ${expected} expected`, held);
    expectAtLeast(held);
  });

  it.each([0.5, 4, 25])('stops for every thousand, %d expected, hold at least as often', (expected) => {
    const cars = 20;
    const each = 50;
    const rate = expected / (cars * each);
    const held = simulate(200 + expected, HISTORIES, (chance) => {
      // A car that stops goes on at once, so that each has all its stops and the field its whole distance.
      const stretches = Array.from({ length: cars }, () => {
        const stops = drawPowerLaw(chance, { rate, shape: 1, end: each });
        return [...stops, each].map((to, index) => ({
          ...{ from: stops[index - 1] ?? 0, to, unsure: false },
          cause: index < stops.length ? 'off' : null,
        }));
      }).flat();
      const { perThousand } = stopRates(stretches, ['off'], { level: LEVEL }).all;
      return perThousand && { rate: { truth: 1000 * rate, bounds: perThousand.bounds } };
    });
    print(`stops for every thousand, ${expected} expected`, held);
    expectAtLeast(held);
  });
});

describe('bounds that lean on many units', () => {
  it.each([10, 40])('of the mean number of failures, %i cars that differ: printed', (cars) => {
    const end = 300;
    const held = simulate(300 + cars, 3000, (chance) => {
      const units = Array.from({ length: cars }, () => {
        const rate = (chance.oneIn(2) ? 0.5 : 1.5) / MEAN;
        return { events: drawPowerLaw(chance, { rate, shape: 1, end }), end };
      });
      const curve = meanCumulative(units, { level: LEVEL });
      const last = curve.ok ? curve.steps.at(-1) : undefined;
      if (!last?.bounds) return null;
      const reach = (1.96 * last.poissonError) / last.mean;
      const poisson = { low: last.mean * Math.exp(-reach), high: last.mean * Math.exp(reach) };
      const truth = end / MEAN;
      return { robust: { truth, bounds: last.bounds }, 'as if alike': { truth, bounds: poisson } };
    });
    print(`mean cumulative number, ${cars} cars`, held);
  });
});
