import type { JobCard } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import type { FactPlace } from './car-fact';
import { fittedAt } from './fitted-at';
import { FACT, openBay } from './testing/bay';
import { MIA } from './testing/people';
import { ROUTE } from './testing/route';

/** Of the route: start 0, SS1 1, Service A 2-3, SS3 4, Service B 5-6. */
const START: FactPlace = { kind: 'road', afterStageId: null };
const SERVICE_A: FactPlace = { kind: 'service', serviceId: 'A' };
const BEHIND_SS3: FactPlace = { kind: 'road', afterStageId: 'SS3' };

function cardAt(place: JobCard['place'], positions: string[] = []) {
  const spec = {
    name: '',
    kind: 'wear' as const,
    unit: '',
    decimals: 0,
    low: null,
    high: null,
    required: false,
  };
  return { id: 'card', place, readings: positions.length > 0 ? [{ ...spec, id: 'r', positions }] : [] };
}
const BELT = cardAt('engineBay');
const FRONT_PADS = cardAt('allCorners', ['FL', 'FR']);
const TYRES = cardAt('allCorners', ['FL inner', 'FL outer']);
const HUBS = cardAt('allCorners');

type Row = [
  what: string,
  card: typeof BELT,
  fitted: [string | null, FactPlace][],
  until: number,
  from: number | null,
];
const ROWS: Row[] = [
  ['nothing was fitted', BELT, [], 6, null],
  ['the card has one part', BELT, [[null, SERVICE_A]], 6, 2],
  ['behind a stage: from the point that follows', BELT, [[null, BEHIND_SS3]], 6, 5],
  ['before the first stage: from the start', BELT, [[null, START]], 6, 0],
  ['later than asked for', BELT, [[null, BEHIND_SS3]], 4, null],
  [
    'twice: the later one',
    BELT,
    [
      [null, BEHIND_SS3],
      [null, SERVICE_A],
    ],
    6,
    5,
  ],
  ['one side of two: the old one rules', FRONT_PADS, [['FL', SERVICE_A]], 6, null],
  [
    'both sides, one after the other: the older one rules',
    FRONT_PADS,
    [
      ['FL', SERVICE_A],
      ['FR', BEHIND_SS3],
    ],
    6,
    2,
  ],
  ['both together', FRONT_PADS, [[null, BEHIND_SS3]], 6, 5],
  ['a wheel stands for the places at it', TYRES, [['FL', SERVICE_A]], 6, 2],
  ['one corner of four', HUBS, [['FL', SERVICE_A]], 6, null],
  ['one of nobody knows how many', BELT, [['FL', SERVICE_A]], 6, null],
];

describe('fittedAt', () => {
  it.each(ROWS)('%s', (_what, card, fitted, until, from) => {
    const bay = openBay();
    for (const [index, [position, at]] of fitted.entries()) {
      const fact = { kind: 'fitted' as const, cardId: 'card', position, words: '' };
      bay.act({ kind: 'recordFact', args: { ...FACT.args, factId: `f${index}`, at, fact } }, MIA);
    }
    const found = fittedAt(bay.state.facts.values(), ROUTE, 'car7', [card], until);
    expect(found).toEqual(from === null ? [] : [{ cardId: 'card', pointIndex: from }]);
    expect(fittedAt(bay.state.facts.values(), ROUTE, 'car9', [card], until)).toEqual([]);
  });
});
