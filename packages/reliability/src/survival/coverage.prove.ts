import { describe, it } from 'vitest';
import { drawWait, LEVEL, print, simulate } from '../simulated/fixtures';
import { cumulativeIncidence } from './cumulative-incidence';
import { kaplanMeier } from './kaplan-meier';
import { stepAt } from './step-at';

const HISTORIES = 4000;
const MEAN = 100;
const END = 90;
/** Where half, and where four in five, are still good. */
const PLACES = [MEAN * Math.LN2, MEAN * Math.log(1.25)];

describe('bounds without any formula of wear, which hold the truth in the long run only: printed', () => {
  it.each([20, 60])('of the share still good, %i lives, by scale', (count) => {
    for (const place of PLACES) {
      const held = simulate(count, HISTORIES, (chance) => {
        const lives = Array.from({ length: count }, () => {
          const [failsAt, watchedTo] = [drawWait(chance, 1 / MEAN), END * (0.5 + chance.next() / 2)];
          return { distance: Math.min(failsAt, watchedTo), failed: failsAt <= watchedTo };
        });
        const boundsAt = (scale: 'plain' | 'log' | 'logLog') => {
          const curve = kaplanMeier(lives, { level: LEVEL, scale });
          return curve.ok ? stepAt(curve.steps, place)?.bounds : undefined;
        };
        const [plain, log, logLog] = [boundsAt('plain'), boundsAt('log'), boundsAt('logLog')];
        if (!plain || !log || !logLog) return null;
        const truth = Math.exp(-place / MEAN);
        return {
          ...{ plain: { truth, bounds: plain }, log: { truth, bounds: log } },
          'log-log': { truth, bounds: logLog },
        };
      });
      print(`share still good at ${place.toFixed(0)}, ${count} lives`, held);
    }
  });

  it.each([20, 100])('of the share stopped by one cause of two, %i cars', (count) => {
    const place = PLACES[0] ?? 0;
    const held = simulate(500 + count, HISTORIES, (chance) => {
      const lives = Array.from({ length: count }, () => {
        const distance = drawWait(chance, 1 / MEAN);
        const cause = chance.oneIn(4) ? 'off' : 'mechanical';
        return distance <= END ? { distance, cause } : { distance: END, cause: null };
      });
      const curves = cumulativeIncidence(lives, { level: LEVEL });
      if (!curves.ok) return null;
      const boundsOf = (cause: string) =>
        stepAt(curves.causes.find((curve) => curve.cause === cause)?.steps ?? [], place)?.bounds;
      const [off, mechanical] = [boundsOf('off'), boundsOf('mechanical')];
      if (!off || !mechanical) return null;
      const ended = 1 - Math.exp(-place / MEAN);
      return {
        'one in four': { truth: ended / 4, bounds: off },
        'three in four': { truth: (3 * ended) / 4, bounds: mechanical },
      };
    });
    print(`share stopped by a cause, ${count} cars`, held);
  });
});
