import type { PartEvent } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import type { CarFact, FactPlace } from './car-fact';
import type { ActionBody, Reading } from './model';
import { readingsOf } from './readings-of';
import { close, FACT, NUTS, openBay, WHEEL } from './testing/bay';
import { KAI, MIA } from './testing/people';
import { ROUTE } from './testing/route';

/** Of the route: start 0, SS1 1, Service A 2-3, SS3 4, Service B 5-6. */
const atA = { ...NUTS, serviceId: 'A' };
const pad = (position: string | null, value: number): Reading => ({ readingId: 'pad', position, value });
const record = (fact: CarFact, at: FactPlace, factId: string): ActionBody => ({
  kind: 'recordFact',
  args: { ...FACT.args, factId, at, fact },
});
const fitted = (at: FactPlace, position: string | null = null, factId = 'new'): ActionBody =>
  record({ kind: 'fitted', cardId: 'nuts', position, words: '' }, at, factId);
const tyre = (
  tyreId: string,
  place: 'FL' | 'spare1' | 'service',
  at: FactPlace,
  factId: string,
): ActionBody => {
  const nothing = { treadTenths: null, coldMillibar: null, hotMillibar: null };
  return record({ kind: 'tyre', tyreId, mark: tyreId, compound: 'medium', place, ...nothing }, at, factId);
};
const SERVICE_A: FactPlace = { kind: 'service', serviceId: 'A' };
const BEHIND_SS1: FactPlace = { kind: 'road', afterStageId: 'SS1' };
const BEHIND_SS3: FactPlace = { kind: 'road', afterStageId: 'SS3' };

function historyOf(bodies: ActionBody[], entryId = 'car7'): PartEvent[] {
  const bay = openBay();
  bodies.forEach((body, index) => {
    bay.act(body, index % 2 === 0 ? MIA : KAI);
  });
  return readingsOf(bay.state, ROUTE, entryId);
}

/** In short: "read nuts pad FL 82 @2". */
function inShort(event: PartEvent): string {
  switch (event.kind) {
    case 'read':
      return `read ${event.cardId} ${event.readingId} ${event.position ?? '-'} ${event.value} @${event.pointIndex}`;
    case 'tyreOn':
      return `tyre ${event.wheel}${event.replaces ? ' another' : ''} @${event.pointIndex}`;
    case 'fitted':
      return `fitted ${event.cardId} ${event.position ?? 'all'} @${event.pointIndex}`;
    case 'done':
      return `done ${event.cardId} @${event.pointIndex}`;
  }
}

type Row = [what: string, bodies: ActionBody[], events: string[]];
const ROWS: Row[] = [
  ['nothing yet', [], []],
  [
    'by the route, not by when it was written down',
    [close(NUTS, [], [pad('FL', 70)]), close(atA, [], [pad('FL', 82)])],
    ['done nuts @2', 'read nuts pad FL 82 @2', 'done nuts @5', 'read nuts pad FL 70 @5'],
  ],
  [
    'at one service by the log',
    [close(WHEEL, [], [pad(null, 1)]), close(NUTS, [], [pad('FL', 70)])],
    ['done wheel @5', 'read wheel pad - 1 @5', 'done nuts @5', 'read nuts pad FL 70 @5'],
  ],
  [
    'each place by itself; read again, the later value stands',
    [close(atA, [], [pad('FL', 82), pad('FR', 80)]), close(atA, [], [pad('FL', 81)])],
    ['done nuts @2', 'read nuts pad FL 81 @2', 'read nuts pad FR 80 @2'],
  ],
  [
    'undone: out',
    [close(atA, [], [pad('FL', 82)]), close(WHEEL), { kind: 'undo', args: { actionId: 'a1' } }],
    ['done wheel @5'],
  ],
  [
    'opened again: what was read stays, the work is not done',
    [close(atA, [], [pad('FL', 82)]), { kind: 'reopenTask', args: { task: atA, reason: 'look again' } }],
    ['read nuts pad FL 82 @2'],
  ],
  [
    'another car, a repair of a snag, a service that is gone: out',
    [
      close({ ...atA, entryId: 'car9' }, [], [pad('FL', 82)]),
      close({ ...atA, serviceId: 'Z' }, [], [pad('FL', 82)]),
      close({ ...atA, source: { kind: 'snag', snagId: 'leak' } }, [], [pad('FL', 82)]),
    ],
    [],
  ],
  [
    'a new part on the road counts from the point behind it, before the service there',
    [close(atA, [], [pad('FL', 82)]), fitted(BEHIND_SS1, 'FL')],
    ['fitted nuts FL @2', 'done nuts @2', 'read nuts pad FL 82 @2'],
  ],
  [
    'a new part in a service counts from there, by the log',
    [close(atA, [], [pad('FL', 82)]), fitted(SERVICE_A)],
    ['done nuts @2', 'read nuts pad FL 82 @2', 'fitted nuts all @2'],
  ],
  [
    'a new part taken back: out',
    [fitted(BEHIND_SS3), close(WHEEL), { kind: 'undo', args: { actionId: 'a1' } }],
    ['done wheel @5'],
  ],
  [
    'a tyre on a wheel, measured there again, and another one in its place',
    [
      tyre('one', 'FL', { kind: 'road', afterStageId: null }, 't1'),
      tyre('two', 'spare1', SERVICE_A, 't2'),
      tyre('one', 'FL', SERVICE_A, 't3'),
      tyre('two', 'FL', BEHIND_SS3, 't4'),
    ],
    ['tyre FL @0', 'tyre FL another @5'],
  ],
];

describe('readingsOf', () => {
  it.each(ROWS)('%s', (_what, bodies, events) => {
    expect(historyOf(bodies).map(inShort)).toEqual(events);
  });

  it('says where each value was read', () => {
    expect(historyOf([close(atA, [], [pad('FL', 82)])])[1]).toEqual({
      kind: 'read',
      cardId: 'nuts',
      readingId: 'pad',
      serviceId: 'A',
      pointIndex: 2,
      position: 'FL',
      value: 82,
    });
  });
});
