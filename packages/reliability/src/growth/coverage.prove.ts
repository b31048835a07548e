import { describe, it } from 'vitest';
import { drawPowerLaw, expectAtLeast, expectNominal, LEVEL, print, simulate } from '../simulated/fixtures';
import { fitPowerLaw } from './fit-power-law';
import { fitPowerLawGrouped } from './fit-power-law-grouped';

const HISTORIES = 1500;
const SHAPES = [0.5, 1.4];
const END = 1500;
const EXPECTED = 10;

function lawOf(shape: number) {
  return { rate: EXPECTED / END ** shape, shape, end: END };
}

describe('bounds of the power law', () => {
  it.each(SHAPES)(
    'stopped at a distance, shape %d: the shape as often as asked, the distance now at least',
    (shape) => {
      const distanceNow = END / (EXPECTED * shape);
      const held = simulate(10 * shape, HISTORIES, (chance) => {
        const events = drawPowerLaw(chance, lawOf(shape));
        const fit = fitPowerLaw({ stoppedAt: 'distance', events, end: END }, { level: LEVEL });
        if (!fit.ok) return null;
        const { exact, approximate } = fit.distanceNowBounds;
        return {
          shape: { truth: shape, bounds: fit.shapeBounds },
          'distance now, exact': { truth: distanceNow, bounds: exact },
          'distance now, approximate': { truth: distanceNow, bounds: approximate ?? exact },
        };
      });
      print(`power law stopped at a distance, shape ${shape}`, held);
      expectNominal(new Map([...held].filter(([name]) => name === 'shape')));
      expectAtLeast(new Map([...held].filter(([name]) => name === 'distance now, exact')));
    },
  );

  it.each(SHAPES)('stopped at a failure, shape %d: both as often as asked', (shape) => {
    const { rate } = lawOf(shape);
    const held = simulate(100 * shape, HISTORIES, (chance) => {
      const events = drawPowerLaw(chance, { rate, shape, end: Infinity, most: EXPECTED });
      const fit = fitPowerLaw({ stoppedAt: 'failure', events }, { level: LEVEL });
      if (!fit.ok) return null;
      const end = events.at(-1) ?? 0;
      // The intensity at the last failure is as much left to chance as the failure is.
      const truth = 1 / (rate * shape * end ** (shape - 1));
      return {
        shape: { truth: shape, bounds: fit.shapeBounds },
        'distance now': { truth, bounds: fit.distanceNowBounds.exact },
      };
    });
    print(`power law stopped at a failure, shape ${shape}`, held);
    expectNominal(held);
  });

  it.each(SHAPES)('from counts of 5 events alone, shape %d: printed', (shape) => {
    const held = simulate(1000 * shape, HISTORIES, (chance) => {
      const events = drawPowerLaw(chance, lawOf(shape));
      const groups = [1, 2, 3, 4, 5].map((number) => ({
        end: (number * END) / 5,
        failures: events.filter((at) => Math.ceil((5 * at) / END) === number).length,
      }));
      const fit = fitPowerLawGrouped(groups, { level: LEVEL });
      return fit.ok ? { shape: { truth: shape, bounds: fit.shapeBounds } } : null;
    });
    print(`power law from counts, shape ${shape}`, held);
  });
});
