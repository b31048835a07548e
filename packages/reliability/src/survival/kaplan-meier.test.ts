import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, frozen, NIST_LIVES, NIST_REMOVED, refused, relativeError, SHOCK_LIVES } from '../fixtures';
import type { Life } from '../model';
import { kaplanMeier } from './kaplan-meier';
import { stepAt } from './step-at';

type Row = [distance: number, atRisk: number, surviving: number, error: number, low: number, high: number];

function expectRows(lives: readonly Life[], rows: readonly Row[], digits: number) {
  const { steps } = answered(kaplanMeier(frozen(lives)));
  expect(steps.map(({ distance, atRisk }) => [distance, atRisk])).toEqual(rows.map((row) => row.slice(0, 2)));
  for (const [index, [, , surviving, error, low, high]] of rows.entries()) {
    const step = steps[index];
    expect(step?.surviving).toBeCloseTo(surviving, digits);
    expect(step?.standardError).toBeCloseTo(error, digits);
    expect(step?.bounds?.low).toBeCloseTo(low, digits);
    expect(step?.bounds?.high).toBeCloseTo(high, digits);
  }
}

describe('kaplanMeier, against published values', () => {
  // Shares: NIST/SEMATECH e-Handbook 8.2.1.5; errors and log-log bounds computed with R, package survival.
  it('gives the NIST example with units removed unfailed', () => {
    expectRows(
      NIST_REMOVED,
      [
        [10, 20, 0.95, 0.04873397, 0.6947432, 0.9928022],
        [32, 19, 0.9, 0.06708204, 0.6560307, 0.9740102],
        [56, 17, 0.8470588, 0.08138832, 0.5967952, 0.9480246],
        [98, 16, 0.7941176, 0.09192128, 0.5396805, 0.9174481],
        [122, 14, 0.737395, 0.1013568, 0.478241, 0.8817849],
        [181, 11, 0.6703591, 0.11214069, 0.4033766, 0.8384649],
      ],
      7,
    );
  });

  it('gives the bounds on the other scales and the cumulative hazard of the NIST example', () => {
    const lastBounds = (scale: 'log' | 'plain') =>
      answered(kaplanMeier(NIST_REMOVED, { scale })).steps.at(-1);
    // Computed with R, package survival (conf.type "log" and "plain").
    expect(relativeError(lastBounds('log')?.bounds?.low ?? 0, 0.482963873)).toBeLessThan(1e-8);
    expect(relativeError(lastBounds('log')?.bounds?.high ?? 0, 0.930465579)).toBeLessThan(1e-8);
    expect(relativeError(lastBounds('plain')?.bounds?.low ?? 0, 0.450567347)).toBeLessThan(1e-8);
    expect(relativeError(lastBounds('plain')?.bounds?.high ?? 0, 0.890150758)).toBeLessThan(1e-8);
    expect(relativeError(lastBounds('log')?.cumulativeHazard ?? 0, 0.386292771)).toBeLessThan(1e-8);
  });

  it('gives the NIST example with all removed at the end (8.4.1.3)', () => {
    const last = answered(kaplanMeier(NIST_LIVES)).steps.at(-1);
    expect(last?.distance).toBe(386);
    expect(last?.surviving).toBeCloseTo(0.5, 12);
    expect(last?.standardError).toBeCloseTo(0.1118034, 7);
    expect(last?.bounds?.low).toBeCloseTo(0.2713278, 7);
    expect(last?.bounds?.high).toBeCloseTo(0.6918925, 7);
    expect(last?.cumulativeHazard).toBeCloseTo(0.668771403, 9);
  });

  // Shock absorbers (O'Connor 1985; Meeker & Escobar 1998, table C.2); values computed with R, package survival.
  it('gives the shock absorbers, where a failure and a censoring share 20100 km', () => {
    expectRows(
      SHOCK_LIVES,
      [
        [6700, 38, 0.9736842, 0.02596722, 0.82751273, 0.9962507],
        [9120, 34, 0.9450464, 0.03783142, 0.79731573, 0.9859949],
        [12200, 26, 0.9086985, 0.05092738, 0.739666, 0.97006],
        [13150, 24, 0.8708361, 0.06128458, 0.68733219, 0.9502647],
        [14300, 20, 0.8272943, 0.07204654, 0.62722131, 0.9258321],
        [17520, 19, 0.7837525, 0.08034175, 0.57363412, 0.8986801],
        [20100, 12, 0.7184398, 0.09661311, 0.48009489, 0.8615539],
        [20900, 8, 0.6286348, 0.11917731, 0.35573447, 0.8118115],
        [22700, 7, 0.5388298, 0.13171115, 0.26134654, 0.7520592],
        [26510, 5, 0.4310639, 0.1428055, 0.16196589, 0.6777354],
        [27490, 3, 0.2873759, 0.15108901, 0.05788275, 0.5794285],
      ],
      7,
    );
    expect(answered(kaplanMeier(SHOCK_LIVES)).steps.at(-1)?.cumulativeHazard).toBeCloseTo(1.12301115, 8);
  });
});

const someLives = fc.array(fc.record({ distance: fc.integer({ min: 0, max: 40 }), failed: fc.boolean() }), {
  minLength: 1,
  maxLength: 30,
});
const withFailure = someLives.filter((lives) => lives.some(({ failed }) => failed));

describe('kaplanMeier', () => {
  it('is the share still running when nothing is censored, with the binomial standard error', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 25 }), (distances) => {
        const { steps } = answered(kaplanMeier(distances.map((distance) => ({ distance, failed: true }))));
        for (const step of steps) {
          const share = distances.filter((distance) => distance > step.distance).length / distances.length;
          expect(step.surviving).toBeCloseTo(share, 12);
          if (share > 0) {
            const binomial = Math.sqrt((share * (1 - share)) / distances.length);
            expect(step.standardError).toBeCloseTo(binomial, 12);
          }
        }
      }),
    );
  });

  it('does not depend on the order of the lives nor on the unit of distance', () => {
    fc.assert(
      fc.property(withFailure, (lives) => {
        const { steps } = answered(kaplanMeier(frozen(lives)));
        expect(answered(kaplanMeier(lives.toReversed())).steps).toEqual(steps);
        const doubled = answered(
          kaplanMeier(lives.map((life) => ({ ...life, distance: life.distance * 2 }))),
        );
        expect(doubled.steps).toEqual(steps.map((step) => ({ ...step, distance: step.distance * 2 })));
      }),
    );
  });

  it('falls, stays within its bounds and within 0 to 1, and widens with the level', () => {
    fc.assert(
      fc.property(withFailure, fc.constantFrom('plain', 'log', 'logLog'), (lives, scale) => {
        const narrow = answered(kaplanMeier(lives, { scale, level: 0.5 })).steps;
        const wide = answered(kaplanMeier(lives, { scale, level: 0.99 })).steps;
        let before = 1;
        for (const [index, { surviving, bounds }] of narrow.entries()) {
          expect(surviving).toBeLessThan(before);
          before = surviving;
          const wider = wide[index]?.bounds;
          if (!bounds || !wider) continue;
          const ends = [0, wider.low, bounds.low, surviving, bounds.high, wider.high, 1];
          expect(ends).toEqual(ends.toSorted((a, b) => a - b));
        }
      }),
    );
  });

  it('says nothing about its error once the last one has failed', () => {
    const { steps } = answered(kaplanMeier([{ distance: 5, failed: true }]));
    expect(steps[0]).toMatchObject({ surviving: 0, standardError: null, bounds: null, cumulativeHazard: 1 });
  });

  it('refuses to draw a curve of nothing', () => {
    expect(refused(kaplanMeier([])).reason).toBe('noLives');
    expect(refused(kaplanMeier([{ distance: 9, failed: false }]))).toEqual({
      ok: false,
      reason: 'noFailures',
      says: 'None of the 1 failed, so there is no curve to draw yet.',
    });
  });

  it('throws on nonsense', () => {
    expect(() => kaplanMeier([{ distance: -1, failed: true }])).toThrow('kaplanMeier: a distance must be');
    expect(() => kaplanMeier([{ distance: Number.NaN, failed: true }])).toThrow(RangeError);
    expect(() => kaplanMeier([], { level: 95 })).toThrow('kaplanMeier: level must be');
  });
});

describe('stepAt', () => {
  const steps = [
    { distance: 10, surviving: 0.9 },
    { distance: 30, surviving: 0.8 },
  ];

  it('gives the last step not beyond a distance', () => {
    expect(stepAt(steps, 9.99)).toBeUndefined();
    expect(stepAt(steps, 10)?.surviving).toBe(0.9);
    expect(stepAt(steps, 29)?.surviving).toBe(0.9);
    expect(stepAt(steps, 1e9)?.surviving).toBe(0.8);
  });
});
