import { describe, expect, it } from 'vitest';
import { fitWeibull } from '../fit/fit-weibull';
import { answered } from '../fixtures';
import type { PartRecord } from './car-history';
import { exposuresOf } from './exposures-of';
import { BELT, carOf, eventOf, lookAt, PADS } from './fixtures';
import { observationsOf } from './observations-of';
import { DRAWN, SEASON_PARTS, scriptSeason } from './scripted-season/fixtures';

const belt = { cardId: 'belt', position: null } as const;
const broke = (point: number): PartRecord => ({ kind: 'broke', ...belt, point, where: 'here' });
const fitted = (point: number): PartRecord => ({ kind: 'fitted', ...belt, point, because: null });
const none = { ageUnknown: 0, enteredLate: 0, failedWhenNew: 0, neverLooked: 0 };

function livesOf(records: PartRecord[], question = BELT, car = {}, event = {}) {
  return observationsOf(exposuresOf([carOf([eventOf(records, event)], car)], [question]));
}

describe('observationsOf', () => {
  it('tells lives of a part that is changed, each from 0', () => {
    expect(livesOf([fitted(1), broke(3), fitted(4)])).toEqual({
      observations: [
        { kind: 'goodAt', distance: 10 },
        { kind: 'failedAt', distance: 20 },
        { kind: 'goodAt', distance: 10 },
      ],
      leftOut: none,
    });
  });

  it('gives a failure found at a look as a range, from nothing when nobody had looked', () => {
    const found = livesOf([lookAt(1), lookAt(3, ['needsWork', 'FL']), lookAt(4, ['needsWork', 'FR'])], PADS);
    expect(found.observations).toEqual([
      { kind: 'failedBetween', after: 10, before: 30 },
      { kind: 'failedBetween', after: 30, before: 40 },
    ]);
    expect(livesOf([lookAt(3, ['needsWork', 'FL'])], PADS).observations[0]).toEqual({
      kind: 'failedBefore',
      distance: 30,
    });
  });

  it('L1 joins a life over a restart, with what was known before it', () => {
    const records: PartRecord[] = [
      lookAt(1),
      { kind: 'out', cause: 'off the road', cardId: null, position: null, where: 'here', point: 2 },
      { kind: 'restarted', point: 3 },
      lookAt(4, ['needsWork', 'FL']),
    ];
    const counted = { stageMetres: [0, 10, 20, 20, 30, 40] };
    expect(livesOf(records, PADS, {}, { counted }).observations).toEqual([
      { kind: 'failedBetween', after: 10, before: 30 },
      { kind: 'goodAt', distance: 30 },
    ]);
  });

  it('L1 ends a life at its first failure, whatever it ran after a repair', () => {
    expect(livesOf([broke(2), { kind: 'madeGood', ...belt, point: 3 }])).toEqual({
      observations: [{ kind: 'failedAt', distance: 20 }],
      leftOut: none,
    });
  });

  it('L2, L3 leaves out, and counts, what would bend the curve', () => {
    const carried = [{ cardId: 'belt', position: null, age: { stageMetres: 5 } }];
    expect(livesOf([broke(2)], BELT, { carried })).toEqual({
      observations: [],
      leftOut: { ...none, enteredLate: 1 },
    });
    expect(livesOf([broke(2)], BELT, { carried: [] }).leftOut).toEqual({ ...none, ageUnknown: 1 });
    expect(livesOf([broke(0)]).leftOut).toEqual({ ...none, failedWhenNew: 1 });
    expect(livesOf([], PADS).leftOut).toEqual({ ...none, neverLooked: 2 });
  });

  it('L4 splits lives at a modification', () => {
    const modified: PartRecord = { kind: 'modified', ...belt, point: 3, newPart: true };
    expect(livesOf([modified, broke(5)]).observations).toEqual([
      { kind: 'goodAt', distance: 30 },
      { kind: 'failedAt', distance: 20 },
    ]);
  });

  it('brings back the distribution that the lives of a scripted season were drawn from', () => {
    const cars = Array.from(
      { length: 120 },
      (_, index) => scriptSeason(7000 + index, `car ${index}`).history,
    );
    for (const question of SEASON_PARTS) {
      const { observations } = observationsOf(exposuresOf(cars, [question]));
      const fit = answered(fitWeibull(observations, { level: 0.999 }));
      expect(fit.failures).toBeGreaterThan(50);
      for (const [estimate, drawn] of [
        [fit.shape, DRAWN.shape],
        [fit.scale, DRAWN.scale],
      ] as const) {
        expect(estimate.likelihoodRatio.low).toBeLessThan(drawn);
        expect(estimate.likelihoodRatio.high ?? Infinity).toBeGreaterThan(drawn);
        expect(Math.abs(estimate.value / drawn - 1)).toBeLessThan(0.25);
      }
    }
  });
});
