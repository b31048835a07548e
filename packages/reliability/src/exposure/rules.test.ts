import { describe, expect, it } from 'vitest';
import { frozen } from '../fixtures';
import { failuresOf } from './car-failures';
import type { PartQuestion, PartRecord } from './car-history';
import { exposuresOf } from './exposures-of';
import { BELT, carOf, changedAt, eventOf, inLine, lookAt, PADS } from './fixtures';

const FL = { cardId: 'pads', position: 'FL' } as const;
const BELT_PART = { cardId: 'belt', position: null } as const;
const FR_RUNS = 'FR 1.0 carried@0 0..50 good 20 running';
const crash = { kind: 'out', cause: 'off the road', cardId: null, position: null, where: 'here' } as const;
const beltOut = { ...crash, cause: 'belt', ...BELT_PART } as const;
const stands = { counted: { stageMetres: [0, 10, 20, 20, 20, 20] } };
const goesOn = { counted: { stageMetres: [0, 10, 20, 20, 30, 40] } };

interface Case {
  says: string;
  of: PartQuestion;
  records: PartRecord[];
  event?: Parameters<typeof eventOf>[1];
  car?: Parameters<typeof carOf>[1];
  lines: string[];
  failures: number[];
}

const CASES: Case[] = [
  {
    says: 'E1 found at a look: after the last good one',
    of: PADS,
    records: [lookAt(2), lookAt(4, ['needsWork', 'FL'])],
    lines: ['FL 1.0 carried@0 0..40 good 20 failed', 'FR 1.0 carried@0 0..50 good 40 running'],
    failures: [40],
  },
  {
    says: 'E1 a temporary repair is a failure too',
    of: PADS,
    records: [lookAt(2, ['temporaryRepair', 'FL'])],
    lines: ['FL 1.0 carried@0 0..20 good 0 failed', FR_RUNS],
    failures: [20],
  },
  {
    says: 'E2 felt since the last point',
    of: BELT,
    records: [{ kind: 'broke', ...BELT_PART, point: 3, where: 'sinceLastPoint' }],
    lines: ['- 1.0 carried@0 0..30 good 20 failed'],
    failures: [30],
  },
  {
    says: 'E2 felt, but the last good look is later than the last point',
    of: PADS,
    records: [lookAt(3), { kind: 'broke', ...FL, point: 3, where: 'sinceLastPoint' }],
    lines: ['FL 1.0 carried@0 0..30 good 30 failed', 'FR 1.0 carried@0 0..50 good 30 running'],
    failures: [30],
  },
  {
    says: 'E3 felt here',
    of: BELT,
    records: [{ kind: 'broke', ...BELT_PART, point: 3, where: 'here' }],
    lines: ['- 1.0 carried@0 0..30 good 30 failed'],
    failures: [30],
  },
  {
    says: 'E4 fitted because it was broken',
    of: PADS,
    records: [lookAt(2), { kind: 'fitted', ...FL, point: 4, because: 'broken' }],
    lines: ['FL 1.0 carried@0 0..40 good 20 failed', 'FL 2.0 new@0 40..50 good 40 running', FR_RUNS],
    failures: [40],
  },
  {
    says: 'E5, B8 out because of this part; it moves again, so something was done',
    of: BELT,
    records: [
      { ...beltOut, point: 2 },
      { kind: 'restarted', point: 3 },
    ],
    event: goesOn,
    lines: ['- 1.0 carried@0 0..20 good 20 failed', '- 2.0 unknown@? 20..40 good 40 running'],
    failures: [20],
  },
  {
    says: 'E5, B3 out because of this part and a new one fitted',
    of: BELT,
    records: [
      { ...beltOut, where: 'sinceLastPoint', point: 2 },
      { kind: 'fitted', ...BELT_PART, point: 3, because: 'broken' },
      { kind: 'restarted', point: 3 },
    ],
    event: goesOn,
    lines: ['- 1.0 carried@0 0..20 good 10 failed', '- 3.0 new@0 20..40 good 40 running'],
    failures: [20],
  },
  {
    says: 'E6, B9 which of two is not said: the car counts it, no life fails',
    of: PADS,
    records: [lookAt(2), lookAt(3, ['needsWork', null]), lookAt(4)],
    lines: [
      'FL 1.0 carried@0 0..20 good 20 placeUnknown',
      'FL 1.0 repaired@? 40..50 good 40 running',
      'FR 1.0 carried@0 0..20 good 20 placeUnknown',
      'FR 1.0 repaired@? 40..50 good 40 running',
    ],
    failures: [30],
  },
  {
    says: 'E7 seen again before it is made good',
    of: PADS,
    records: [
      lookAt(2, ['needsWork', 'FL']),
      { kind: 'broke', ...FL, point: 3, where: 'here' },
      lookAt(3, ['needsWork', 'FL']),
      { kind: 'fitted', ...FL, point: 4, because: 'broken' },
    ],
    lines: [
      'FL 1.0 carried@0 0..20 good 0 failed',
      'FL 2.0 new@0 40..50 good 40 running',
      'FR 1.0 carried@0 0..50 good 30 running',
    ],
    failures: [20],
  },
  {
    says: 'E7 which one is not said, and one of them is known to be down',
    of: PADS,
    records: [lookAt(2, ['needsWork', 'FL']), lookAt(3, ['needsWork', null])],
    lines: ['FL 1.0 carried@0 0..20 good 0 failed', FR_RUNS],
    failures: [20],
  },
  {
    says: 'E7 the same failure seen where it put the car out',
    of: PADS,
    records: [{ ...crash, cause: 'pads', ...FL, point: 2 }, lookAt(3, ['needsWork', 'FL'])],
    event: stands,
    lines: ['FL 1.0 carried@0 0..20 good 20 failed', 'FR 1.0 carried@0 0..20 good 0 withdrawn'],
    failures: [20],
  },
  {
    says: 'E8 the card and a place of it',
    of: PADS,
    records: [lookAt(2, ['needsWork', null], ['needsWork', 'FL'])],
    lines: ['FL 1.0 carried@0 0..20 good 0 failed', FR_RUNS],
    failures: [20],
  },
  {
    says: 'E9 fitted anew without anything wrong',
    of: PADS,
    records: [{ kind: 'fitted', ...FL, point: 2, because: null }, lookAt(2)],
    lines: ['FL 1.0 carried@0 0..20 good 20 replaced', 'FL 2.0 new@0 20..50 good 20 running', FR_RUNS],
    failures: [],
  },
  {
    says: 'E9, E1 a card that means new parts: the bad one failed, the good one was replaced',
    of: { ...PADS, doneRenews: true },
    records: [lookAt(2, ['needsWork', 'FL'])],
    lines: [
      'FL 1.0 carried@0 0..20 good 0 failed',
      'FL 2.0 new@0 20..50 good 20 running',
      'FR 1.0 carried@0 0..20 good 20 replaced',
      'FR 2.0 new@0 20..50 good 20 running',
    ],
    failures: [20],
  },
  {
    says: 'E9 what was patched was not changed',
    of: { ...PADS, doneRenews: true },
    records: [lookAt(2, ['temporaryRepair', 'FL'])],
    lines: [
      'FL 1.0 carried@0 0..20 good 0 failed',
      'FR 1.0 carried@0 0..20 good 20 replaced',
      'FR 2.0 new@0 20..50 good 20 running',
    ],
    failures: [20],
  },
  {
    says: 'E1, B3 found at a look, and a new part went on in its place',
    of: PADS,
    records: [lookAt(2), changedAt(3, ['needsWork', 'FL']), lookAt(4, ['needsWork', 'FL'])],
    lines: [
      'FL 1.0 carried@0 0..30 good 20 failed',
      'FL 2.0 new@0 30..40 good 30 failed',
      'FR 1.0 carried@0 0..50 good 40 running',
    ],
    failures: [30, 40],
  },
  {
    says: 'E9, B3 a new part for one to keep an eye on: it was good to there',
    of: PADS,
    records: [changedAt(2, ['watch', 'FL'])],
    lines: ['FL 1.0 carried@0 0..20 good 20 replaced', 'FL 2.0 new@0 20..50 good 20 running', FR_RUNS],
    failures: [],
  },
  {
    says: 'E7, B3 a new part for what was found before and left',
    of: PADS,
    records: [lookAt(2, ['temporaryRepair', 'FL']), changedAt(4, ['needsWork', 'FL'])],
    lines: [
      'FL 1.0 carried@0 0..20 good 0 failed',
      'FL 2.0 new@0 40..50 good 40 running',
      'FR 1.0 carried@0 0..50 good 40 running',
    ],
    failures: [20],
  },
  {
    says: 'B3 a new part at the only place there is, which nobody need say',
    of: { ...PADS, positions: [] },
    records: [changedAt(2, ['needsWork', null])],
    car: { carried: [] },
    lines: ['- 1.0 unknown@? 0..20 good 0 failed', '- 2.0 new@0 20..50 good 20 running'],
    failures: [20],
  },
  {
    says: 'B11 a new part, and not said at which of two places: no life begins',
    of: PADS,
    records: [changedAt(2, ['needsWork', null]), changedAt(4, ['watch', 'RL'])],
    lines: ['FL 1.0 repaired@? 40..50 good 40 running', 'FR 1.0 repaired@? 40..50 good 40 running'],
    failures: [20],
  },
  {
    says: 'B5 what was patched was not changed, whatever else is said of it',
    of: PADS,
    records: [changedAt(2, ['temporaryRepair', 'FL'])],
    lines: ['FL 1.0 carried@0 0..20 good 0 failed', FR_RUNS],
    failures: [20],
  },
  {
    says: 'E10, B3 modified with a new part',
    of: BELT,
    records: [{ kind: 'modified', ...BELT_PART, point: 3, newPart: true }],
    lines: ['- 1.0 carried@0 0..30 good 30 modified', '- 2.1 new@0 30..50 good 50 running'],
    failures: [],
  },
  {
    says: 'E10, B6 modified and the old part stays',
    of: BELT,
    records: [{ kind: 'modified', ...BELT_PART, point: 3, newPart: false }],
    lines: ['- 1.0 carried@0 0..30 good 30 modified', '- 1.1 modified@30 30..50 good 50 running'],
    failures: [],
  },
  {
    says: 'B6 modified while it is down',
    of: PADS,
    records: [lookAt(2, ['needsWork', 'FL']), { kind: 'modified', ...FL, point: 3, newPart: false }],
    lines: ['FL 1.0 carried@0 0..20 good 0 failed', 'FL 1.1 modified@20 30..50 good 30 running', FR_RUNS],
    failures: [20],
  },
  {
    says: 'E11, G1 withdrawn for another cause',
    of: BELT,
    records: [{ ...crash, point: 2 }],
    event: { ...stands, finished: false },
    lines: ['- 1.0 carried@0 0..20 good 20 withdrawn'],
    failures: [],
  },
  {
    says: 'E11, G2 withdrawn: a hidden failure may be there',
    of: PADS,
    records: [lookAt(1), { ...crash, point: 2 }],
    event: stands,
    lines: ['FL 1.0 carried@0 0..20 good 10 withdrawn', 'FR 1.0 carried@0 0..20 good 10 withdrawn'],
    failures: [],
  },
  {
    says: 'E12, B7 restarted after being out',
    of: BELT,
    records: [
      { ...crash, point: 2 },
      { kind: 'restarted', point: 3 },
    ],
    event: goesOn,
    lines: ['- 1.0 carried@0 0..20 good 20 restarted', '- 1.0 resumed@20 20..40 good 40 running'],
    failures: [],
  },
  {
    says: 'B7, G2 what failed unseen may have failed before the restart',
    of: PADS,
    records: [
      lookAt(1),
      { ...crash, point: 2 },
      { kind: 'restarted', point: 3 },
      lookAt(4, ['needsWork', 'FL']),
    ],
    event: goesOn,
    lines: [
      'FL 1.0 carried@0 0..20 good 10 restarted',
      'FL 1.0 resumed@20 20..30 good 10 failed',
      'FR 1.0 carried@0 0..20 good 10 restarted',
      'FR 1.0 resumed@20 20..40 good 30 running',
    ],
    failures: [30],
  },
  {
    says: 'E13 out without a stated cause',
    of: BELT,
    records: [{ ...crash, cause: null, point: 2 }],
    event: stands,
    lines: ['- 1.0 carried@0 0..20 good 20 notFinished'],
    failures: [],
  },
  {
    says: 'E13 not finished and nobody said why',
    of: BELT,
    records: [],
    event: { finished: false },
    lines: ['- 1.0 carried@0 0..50 good 50 notFinished'],
    failures: [],
  },
  {
    says: 'E14, G1 still running',
    of: BELT,
    records: [],
    lines: ['- 1.0 carried@0 0..50 good 50 running'],
    failures: [],
  },
  {
    says: 'E15, G2 "keep an eye" is good, as is a place nothing was said of',
    of: PADS,
    records: [lookAt(2, ['watch', 'FL'])],
    lines: ['FL 1.0 carried@0 0..50 good 20 running', FR_RUNS],
    failures: [],
  },
  {
    says: 'E16 taken back',
    of: PADS,
    records: [lookAt(2), { ...lookAt(4, ['needsWork', 'FL']), withdrawn: true }],
    lines: ['FL 1.0 carried@0 0..50 good 20 running', FR_RUNS],
    failures: [],
  },
  {
    says: 'B1 carried in at an age',
    of: BELT,
    records: [],
    car: {
      carried: [{ cardId: 'belt', position: null, age: { stageMetres: 7 } }],
      ranBefore: { stageMetres: 100 },
    },
    lines: ['- 1.0 carried@7 100..150 good 150 running'],
    failures: [],
  },
  {
    says: 'B2 of unknown age',
    of: BELT,
    records: [{ kind: 'broke', ...BELT_PART, point: 3, where: 'here' }],
    car: { carried: [], ranBefore: { stageMetres: 600 } },
    lines: ['- 1.0 unknown@? 600..630 good 630 failed'],
    failures: [630],
  },
  {
    says: 'B4 made good: as old as when it failed, and the way in between is no exposure',
    of: PADS,
    records: [lookAt(2, ['temporaryRepair', 'FL']), { kind: 'madeGood', ...FL, point: 4 }],
    lines: ['FL 1.0 carried@0 0..20 good 0 failed', 'FL 1.0 repaired@20 40..50 good 40 running', FR_RUNS],
    failures: [20],
  },
  {
    says: 'B4 found in order after "needs work"',
    of: PADS,
    records: [lookAt(2, ['needsWork', 'FL']), lookAt(3), lookAt(4, ['needsWork', 'FL'])],
    lines: [
      'FL 1.0 carried@0 0..20 good 0 failed',
      'FL 1.0 repaired@20 30..40 good 30 failed',
      'FR 1.0 carried@0 0..50 good 40 running',
    ],
    failures: [20, 40],
  },
  {
    says: 'B5 a patch in order is still a patch',
    of: PADS,
    records: [lookAt(2, ['temporaryRepair', 'FL']), lookAt(3), lookAt(4, ['needsWork', 'FL'])],
    lines: ['FL 1.0 carried@0 0..20 good 0 failed', 'FR 1.0 carried@0 0..50 good 40 running'],
    failures: [20],
  },
  {
    says: 'B5 patched after "needs work"',
    of: PADS,
    records: [lookAt(2, ['needsWork', 'FL']), lookAt(3, ['temporaryRepair', 'FL']), lookAt(4)],
    lines: ['FL 1.0 carried@0 0..20 good 0 failed', 'FR 1.0 carried@0 0..50 good 40 running'],
    failures: [20],
  },
];

describe('the rules', () => {
  it.each(CASES)('$says', ({ of, records, event, car, lines, failures }) => {
    const history = frozen(carOf([eventOf(records, event)], car));
    expect(exposuresOf([history], [of]).map(inLine)).toEqual(lines);
    expect(failuresOf(history, of).map(({ at }) => at)).toEqual(failures);
  });

  it('B10 goes on over the next event, and says at which it began and ended', () => {
    const broke = { kind: 'broke' as const, ...BELT_PART, point: 2, where: 'here' as const };
    const history = carOf([eventOf([]), eventOf([broke], { eventId: 'birch lane' }), eventOf([])]);
    const [exposure, ...others] = exposuresOf([history], [BELT]);
    expect(others).toEqual([]);
    expect(exposure).toMatchObject({ from: 0, to: 70, goodTo: 70, ending: 'failed' });
    expect(exposure?.began).toEqual({ eventId: 'larchwater', point: 0 });
    expect(exposure?.ended).toEqual({ eventId: 'birch lane', point: 2 });
  });

  it('B7 takes a car up again at the next event after it was withdrawn', () => {
    const history = carOf([eventOf([{ ...crash, point: 2 }], { ...stands, finished: false }), eventOf([])]);
    expect(exposuresOf([history], [BELT]).map(inLine)).toEqual([
      '- 1.0 carried@0 0..20 good 20 withdrawn',
      '- 1.0 resumed@20 20..70 good 70 running',
    ]);
  });

  it('E11 is not E12 because the car restarts somewhere else later on', () => {
    const first = eventOf([{ ...crash, point: 2 }], { ...stands, finished: false });
    const history = carOf([first, eventOf([{ kind: 'restarted', point: 3 }])]);
    expect(exposuresOf([history], [BELT]).map(({ ending }) => ending)).toEqual(['withdrawn', 'running']);
  });

  it('counts in the counter that is asked for', () => {
    const counted = { stageMetres: [0, 10, 20], stages: [0, 1, 1] };
    const carried = [{ cardId: 'belt', position: null, age: { stages: 4 } }];
    const history = carOf([eventOf([], { counted })], { carried });
    expect(exposuresOf([history], [{ ...BELT, counter: 'stages' }, BELT]).map(inLine)).toEqual([
      '- 1.0 carried@4 0..1 good 1 running',
      '- 1.0 unknown@? 0..20 good 20 running',
    ]);
  });

  it('hears "FL" of both pads at that wheel, and lets an unknown place excuse no part', () => {
    const inner = { ...PADS, positions: ['FL inner', 'FL outer'] };
    const carried = inner.positions.map((position) => ({
      cardId: 'pads',
      position,
      age: { stageMetres: 0 },
    }));
    const fitted = { kind: 'fitted' as const, cardId: 'pads', point: 2, because: null };
    const lines = (position: string) =>
      exposuresOf([carOf([eventOf([{ ...fitted, position }])], { carried })], [inner]).map(inLine);
    expect(lines('FL')).toHaveLength(4);
    expect(lines('FL outer')).toHaveLength(3);
    expect(lines('RR')).toEqual([
      'FL inner 1.0 carried@0 0..50 good 0 running',
      'FL outer 1.0 carried@0 0..50 good 0 running',
    ]);
  });

  it('throws on what cannot have been driven', () => {
    const of =
      (records: PartRecord[], stageMetres = [0, 10, 20]) =>
      () =>
        exposuresOf([carOf([eventOf(records, { counted: { stageMetres } })])], [BELT]);
    expect(of([{ ...crash, point: 1 }])).toThrow('driven on while it is out at event larchwater');
    expect(of([{ ...crash, point: 3 }])).toThrow('event larchwater has no point 3');
    expect(of([], [0, 10, 5])).toThrow('stageMetres falls at event larchwater');
    expect(of([], [])).toThrow('nothing counts stageMetres at event larchwater');
    expect(of([], [0, Number.NaN])).toThrow('an amount of stageMetres must be');
  });
});
