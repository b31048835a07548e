import { describe, expect, it } from 'vitest';
import type { TaskRef } from './model';
import { type CarOfCards, reopensOf } from './reopens-of';

const CAR: CarOfCards = {
  cards: [
    { id: 'pads', starterId: 'starter:front-pads' },
    { id: 'nuts', starterId: 'starter:wheel-nuts' },
    { id: 'again', starterId: 'starter:wheel-nuts-again' },
    { id: 'oil', starterId: 'starter:oil-and-filter' },
    { id: 'own', starterId: null },
  ],
};
const at = (cardId: string, serviceId = 'B'): TaskRef => ({
  entryId: 'e7',
  serviceId,
  source: { kind: 'card', cardId },
});

describe('reopensOf', () => {
  it('names the wheel nuts of the same service for work that takes a wheel off', () => {
    expect(reopensOf(at('pads'), CAR)).toEqual(['e7~B~card~nuts']);
    expect(reopensOf(at('pads', 'C'), CAR)).toEqual(['e7~C~card~nuts']);
  });

  it('names every copy of the nuts, and never the work itself', () => {
    const cards = [...CAR.cards, { id: 'copy', starterId: 'starter:wheel-nuts' }];
    expect(reopensOf(at('pads'), { ...CAR, cards })).toEqual(['e7~B~card~nuts', 'e7~B~card~copy']);
    expect(reopensOf(at('nuts'), CAR)).toEqual([]);
  });

  it('names nothing for other work, own cards and snags', () => {
    expect(reopensOf(at('oil'), CAR)).toEqual([]);
    expect(reopensOf(at('own'), CAR)).toEqual([]);
    const snag: TaskRef = { entryId: 'e7', serviceId: 'B', source: { kind: 'snag', snagId: 's' } };
    expect(reopensOf(snag, CAR)).toEqual([]);
  });
});
