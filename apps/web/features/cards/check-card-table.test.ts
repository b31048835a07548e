import { cardsToTable, starterCards } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import { checkCardTable, importInWords } from './check-card-table';

const cards = starterCards('rear', 'tarmac').slice(0, 3);
const table = cardsToTable(cards.slice(1));

describe('checkCardTable', () => {
  it('says nothing of nothing', () => {
    expect(checkCardTable(' \n', 'add', cards)).toEqual({ state: 'empty' });
  });

  it('hands wrong cells on with row and column', () => {
    const text = 'Name,Place,Every,Minutes\nNuts,roof rack,1 day,2';
    expect(checkCardTable(text, 'add', [])).toMatchObject({
      state: 'bad',
      problems: [{ row: 2, column: 2, field: 'Place' }],
    });
  });

  it('adds every card of the table, and names those the car has already', () => {
    const checked = checkCardTable(table, 'add', cards);
    if (checked.state !== 'good') throw new Error(checked.state);
    expect(checked.matched.cards.map(({ id }) => id)).toEqual([null, null]);
    expect(checked.sameName).toEqual(cards.slice(1).map((card) => card.name));
    expect(importInWords(checked.matched)).toBe('2 cards are new.');
  });

  it('replaces: same names stay, the rest go', () => {
    const checked = checkCardTable(table, 'replace', cards);
    if (checked.state !== 'good') throw new Error(checked.state);
    expect(checked.matched.removed).toEqual(cards.slice(0, 1));
    expect(checked.sameName).toEqual([]);
    expect(importInWords(checked.matched)).toBe(
      '2 cards take the place of one with the same name. 1 card of the car is not in the table and will be removed.',
    );
  });
});
