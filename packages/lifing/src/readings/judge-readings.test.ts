import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deepFreeze } from '../fixtures';
import { fullStarterCards } from '../full-starter/full-starter-cards';
import type { JobCard } from '../job-card';
import type { Verdict } from '../model';
import { starterCards } from '../starter-cards';
import { starterCard } from '../starter-parts';
import { POINTS, SERVICES, twoDays } from '../triggers/fixtures';
import type { ReadingsQuestion } from './judge-gauges';
import { judgeReadings } from './judge-readings';
import type { PartEvent } from './model';

/*
 * Stage km: 24 from Service A to B (remote, 10 minutes), 24 to C, 12 to D, 24 to E, 20 to the finish. Pads are read with
 * the round of the front corners and changed by a job of 20 minutes, never at a remote service.
 */
const CARDS = starterCards('four', 'gravel');
const ROUND = 'starter:front-corners';
const CHANGE = 'starter:front-pads';
type At = keyof typeof SERVICES;
const pointOf = (at: At) => POINTS[`at${at}`];

function read(
  at: At,
  values: Record<string, number>,
  of = { cardId: ROUND, readingId: 'pads' },
): PartEvent[] {
  return Object.entries(values).map(([position, value]) => ({
    kind: 'read',
    ...of,
    serviceId: at,
    pointIndex: pointOf(at),
    position: position === '-' ? null : position,
    value,
  }));
}
const changed = (at: At, values: Record<string, number> = {}): PartEvent[] => [
  { kind: 'done', cardId: CHANGE, pointIndex: pointOf(at) },
  ...read(at, values, { cardId: CHANGE, readingId: 'pads' }),
];
const fitted = (at: At, position: string | null): PartEvent => ({
  kind: 'fitted',
  cardId: CHANGE,
  position,
  pointIndex: pointOf(at),
});

function judge(at: At, history: readonly PartEvent[], own: Partial<ReadingsQuestion> = {}) {
  return judgeReadings(
    deepFreeze({
      ...twoDays(),
      runs: new Map(),
      plannedConditions: new Map(),
      serviceIndex: SERVICES[at],
      position: 1,
      cards: CARDS,
      history,
      surface: 'gravel' as const,
      ...own,
    }),
  );
}
const words = (...args: Parameters<typeof judge>) =>
  judge(...args).flatMap(({ cardId, verdict, reasons }) =>
    reasons.map((each) => `${cardId} ${verdict}: ${each.words}`),
  );

describe('pads read at the corner, changed by a job of their own', () => {
  it('two readings: the loss so far, a fifth on top, to the next service where they can be changed', () => {
    // 1.9 mm in 24 km; from Service B 36 km to D: 1.9 × 1.5 × 1.2 = 3.42, cut upwards 3.5.
    expect(words('C', [...read('A', { FL: 100 }), ...read('B', { FL: 81 })])).toEqual([
      'starter:front-pads leave: Pad thickness FL: 8.1 mm at Service B, 4.6 expected at Service D, limit 3.0: lasts',
    ]);
  });

  it('read here: it counts at once', () => {
    const history = [...read('A', { FL: 100 }), ...read('B', { FL: 81 }), ...read('C', { FL: 45 })];
    // 3.6 mm in 24 km; 12 km to D: 3.6 × 0.5 × 1.2 = 2.16, cut upwards 2.2.
    expect(words('C', history)).toEqual([
      "starter:front-pads doNow: Pad thickness FL: 4.5 mm now, 2.3 expected at Service D, limit 3.0: won't last",
    ]);
  });

  it('the worst place rules, and one axle learns from both sides', () => {
    const history = [...read('A', { FL: 100, FR: 100 }), ...read('C', { FL: 90, FR: 40 })];
    const [verdict] = judge('C', history);
    expect(verdict).toMatchObject({ cardId: CHANGE, verdict: 'doNow' });
    expect(verdict?.reasons.map((each) => each.position)).toEqual(['FR']);
  });

  it('one reading is too little: nothing is asked for', () => {
    expect(words('B', read('A', { FL: 62 }))).toEqual([
      'starter:front-pads leave: cannot be done at this service, next chance Service C',
      'starter:front-pads leave: Pad thickness FL: 6.2 mm at Service A, limit 3.0: not known yet how fast it wears',
    ]);
  });

  it('what is read later does not count here', () => {
    const history = [...read('A', { FL: 100 }), ...read('B', { FL: 81 }), ...read('D', { FL: 20 })];
    expect(judge('C', history)).toEqual(judge('C', history.slice(0, -1)));
  });

  it('dust ahead counts as the card says', () => {
    const history = [...read('A', { FL: 100 }), ...read('B', { FL: 81 })];
    const rough = new Map(['SS3', 'SS4', 'SS5'].map((id) => [id, { rough: 1000 }]));
    // A fifth more on rough stages: 1.9 × 1.5 × 1.2 × 1.2 = 4.104.
    expect(judge('C', history, { plannedConditions: rough })[0]?.reasons[0]).toMatchObject({ lossAhead: 42 });
  });
});

describe('a new part starts anew', () => {
  const worn = [...read('A', { FL: 100, FR: 100 }), ...read('B', { FL: 60, FR: 60 })];

  type Row = [what: string, at: At, history: PartEvent[], said: string[]];
  const ROWS: Row[] = [
    [
      'changed and measured: the rate of the old set, the value of the new one',
      'D',
      [...worn, ...changed('C', { FL: 100, FR: 100 })],
      // 4.0 mm in 24 km; 36 km from Service C to E: 4.0 × 1.5 × 1.2 = 7.2.
      ["FL: 10.0 mm at Service C, 2.8 expected at Service E, limit 3.0: won't last"],
    ],
    ['changed and not measured: nothing to say', 'D', [...worn, ...changed('C')], []],
    [
      'only one side: the other is what it was',
      'C',
      [...worn, fitted('B', 'FL')],
      ["FR: 6.0 mm at Service B, 0.0 expected at Service D, limit 3.0: won't last"],
    ],
    ['both sides', 'C', [...worn, fitted('B', null)], []],
    [
      'the round closed behind the change: what it read was the old part all the same',
      'D',
      [...worn, ...changed('C', { FL: 100 }), ...read('C', { FL: 31 })],
      ["FL: 10.0 mm at Service C, 2.8 expected at Service E, limit 3.0: won't last"],
    ],
    [
      'nothing read on fitting: the log parts old and new',
      'D',
      [...worn, ...changed('C'), ...read('C', { FL: 99 })],
      ["FL: 9.9 mm at Service C, 2.7 expected at Service E, limit 3.0: won't last"],
    ],
  ];
  it.each(ROWS)('%s', (_what, at, history, said) => {
    const reasons = judge(at, history)
      .filter(({ cardId }) => cardId === CHANGE)
      .flatMap((each) => each.reasons);
    expect(
      reasons.map((each) => each.words.replace('Pad thickness ', '')).filter((each) => said.includes(each)),
    ).toEqual(said);
    if (said.length === 0) expect(reasons).toEqual([]);
  });

  it('changed at this very service: what was due stays in its place', () => {
    const before = judge('C', worn);
    expect(before[0]?.verdict).toBe('doNow');
    expect(judge('C', [...worn, ...changed('C', { FL: 100, FR: 100 })])).toEqual(before);
  });

  it('another tyre on the wheel is a new part of that wheel only', () => {
    const cards = fullStarterCards('four', 'gravel');
    const of = { cardId: 'starter:front-left-corner', readingId: 'tread' };
    const tyreOn = (at: At, mark: 'first' | 'other'): PartEvent => ({
      kind: 'tyreOn',
      wheel: 'FL',
      compound: 'medium',
      replaces: mark === 'other',
      pointIndex: pointOf(at),
    });
    const history = [
      tyreOn('A', 'first'),
      ...read('A', { 'FL inner': 80 }, of),
      ...read('B', { 'FL inner': 40 }, of),
      tyreOn('B', 'other'),
    ];
    expect(judge('C', history.slice(0, -1), { cards })[0]).toMatchObject({ verdict: 'doNow' });
    expect(judge('C', history, { cards })).toEqual([]);
  });
});

describe('readings of other kinds', () => {
  const card = (own: Partial<JobCard['readings'][number]>): JobCard =>
    starterCard({
      id: 'own',
      name: 'Own card',
      place: 'wholeCar',
      seconds: 60,
      readings: [
        {
          id: 'r',
          name: 'Torque',
          kind: 'setValue',
          unit: 'Nm',
          decimals: 0,
          positions: [],
          low: 90,
          high: 150,
          required: false,
          ...own,
        },
      ],
    });
  const own = { cardId: 'starter:own', readingId: 'r' };
  const said = (at: At, history: PartEvent[], spec: Partial<JobCard['readings'][number]> = {}) =>
    words(at, history, { cards: [card(spec)] }).map((each) => each.replace('starter:own ', ''));

  it('a set value out of its band asks for the card until it is read again, or done', () => {
    const low = read('A', { '-': 80 }, own);
    expect(said('B', low)).toEqual(['doNow: Torque: 80 Nm, at least 90, read at Service A']);
    expect(said('A', low)).toEqual(['doNow: Torque: 80 Nm, at least 90']);
    expect(said('B', [...low, ...read('B', { '-': 110 }, own)])).toEqual([]);
    expect(said('C', [...low, { kind: 'done', cardId: 'starter:own', pointIndex: pointOf('B') }])).toEqual(
      [],
    );
  });

  it('failed asks for it, passed does not, and a hint never does', () => {
    const failed = read('A', { '-': 0 }, own);
    expect(said('B', failed, { kind: 'passFail', low: 1, high: null })).toEqual([
      'doNow: Torque: failed, read at Service A',
    ]);
    expect(said('B', read('A', { '-': 1 }, own), { kind: 'passFail', low: 1, high: null })).toEqual([]);
    expect(said('B', failed, { kind: 'hint' })).toEqual([]);
  });

  it('oil topped up: by the stage km it was used on', () => {
    const oil = { cardId: 'starter:oil-level', readingId: 'added' };
    const poured = (values: [At, number][]) => values.flatMap(([at, value]) => read(at, { '-': value }, oil));
    // 0.2 l on 24 km is 0.83 on 100, above 0.5; 0.1 l is 0.41.
    expect(
      words(
        'B',
        poured([
          ['A', 0],
          ['B', 2],
        ]),
      ),
    ).toEqual(['starter:oil-level doNow: Oil added: 0.8 l on 100 stage km, at most 0.5']);
    expect(
      words(
        'B',
        poured([
          ['A', 0],
          ['B', 1],
        ]),
      ),
    ).toEqual([]);
    // Too few km between C and D to say.
    expect(
      words(
        'D',
        poured([
          ['C', 0],
          ['D', 4],
        ]),
      ),
    ).toEqual([]);
  });

  it("a team's own wearing part is judged on its own card", () => {
    const spec = { name: 'Slide', kind: 'wear' as const, unit: 'mm', decimals: 1, low: 30, high: null };
    expect(said('B', [...read('A', { '-': 70 }, own), ...read('B', { '-': 45 }, own)], spec)).toEqual([
      "doNow: Slide: 4.5 mm now, 1.5 expected at Service C, limit 3.0: won't last",
    ]);
  });
});

const ORDER: Verdict[] = ['leave', 'ifTime', 'doNow'];

// Up to five readings of a place: from six on a line is laid through them, and one that lies better on it is surer too.
describe('what must never be', () => {
  const services: At[] = ['A', 'B', 'C', 'D', 'E'];
  const losses = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 5, maxLength: 5 });
  const valuesOf = (lost: readonly number[]) => {
    let left = 120;
    return lost.map((loss) => (left -= loss));
  };
  const historyOf = (values: readonly number[]) =>
    values.flatMap((value, index) => read(services[index] ?? 'A', { FL: value }));
  const pressing = (at: At, values: readonly number[], marginPerMille = 1200) => {
    const verdict = judge(at, historyOf(values), { marginPerMille }).find(({ cardId }) => cardId === CHANGE);
    // How pressing it is says more than the verdict where the service is too short.
    const isDue = verdict?.reasons.some(({ code }) => code === 'wearsOut' || code === 'outOfOrder') ?? false;
    return [ORDER.indexOf(verdict?.verdict ?? 'leave'), Number(isDue), Number(verdict?.overdue ?? false)];
  };
  const notMilder = (before: number[], after: number[]) =>
    after.every((level, index) => level >= (before[index] ?? 0));

  it('a lower last reading never gives a milder verdict', () => {
    fc.assert(
      fc.property(
        losses,
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 60 }),
        fc.constantFrom(...services),
        (lost, count, less, at) => {
          const values = valuesOf(lost).slice(0, count);
          const lower = values.with(-1, (values.at(-1) ?? 0) - less);
          expect(notMilder(pressing(at, values), pressing(at, lower))).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('more margin never gives a milder verdict', () => {
    fc.assert(
      fc.property(
        losses,
        fc.integer({ min: 0, max: 3000 }),
        fc.integer({ min: 0, max: 2000 }),
        fc.constantFrom(...services),
        (lost, margin, more, at) => {
          const values = valuesOf(lost);
          expect(notMilder(pressing(at, values, margin), pressing(at, values, margin + more))).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('a new part is never judged by the value of the old one', () => {
    fc.assert(
      fc.property(losses, fc.integer({ min: 60, max: 120 }), (lost, fresh) => {
        const worn = historyOf(valuesOf(lost).slice(0, 3));
        const verdict = judge('D', [...worn, ...changed('C', { FL: fresh })]).find(
          ({ cardId }) => cardId === CHANGE,
        );
        expect(verdict?.reasons.find(({ position }) => position === 'FL')?.value ?? fresh).toBe(fresh);
      }),
      { numRuns: 200 },
    );
  });
});
