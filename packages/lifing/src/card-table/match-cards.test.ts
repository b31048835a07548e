import { describe, expect, it } from 'vitest';
import { starterCards } from '../starter-cards';
import { cardsToTable } from './cards-to-table';
import { matchCards } from './match-cards';
import { readCardTable } from './read-card-table';

const cards = starterCards('four', 'gravel').map((card, index) => ({ ...card, id: `card-${index}` }));

function readBack(text: string) {
  const read = readCardTable(text);
  if (!read.ok) throw new Error(read.problems[0]?.message);
  return read.cards;
}

describe('matchCards', () => {
  it('finds every card of an export, and leaves it as it was', () => {
    const { cards: matched, removed } = matchCards(cards, readBack(cardsToTable(cards)));
    expect(matched.map(({ id, card }) => ({ ...card, id }))).toEqual(cards);
    expect(removed).toEqual([]);
  });

  it('tells new cards and cards left out', () => {
    const [first, ...rest] = cards;
    const [second] = rest;
    if (!first || !second) throw new Error('There are too few starter cards.');
    const { id: _id, ...body } = second;
    const matched = matchCards(cards, [...rest, { ...body, name: 'Something new' }]);
    expect(matched.cards.at(-1)?.id).toBeNull();
    expect(matched.cards.at(0)?.id).toBe(second.id);
    expect(matched.removed).toEqual([first]);
  });

  it('keeps what a table from before “New part” leaves unsaid, and takes what one says', () => {
    const pads = cards.find(({ starterId }) => starterId === 'starter:front-pads');
    const nuts = cards.find(({ starterId }) => starterId === 'starter:wheel-nuts');
    if (!pads || !nuts) throw new Error('The starter cards lack pads or nuts.');
    const before = [
      { ...pads, fitsNewPart: false },
      { ...nuts, fitsNewPart: true },
    ];
    const fits = (table: string) =>
      matchCards(before, readBack(table)).cards.map(({ card }) => card.fitsNewPart);
    const head = 'Name,Place,Every,Minutes';
    const rows = before.map(({ name }) => `${name},boot,1 day,2`);
    expect(fits([head, ...rows].join('\n'))).toEqual([false, true]);
    expect(fits([`${head},New part`, ...rows.map((row) => `${row},`)].join('\n'))).toEqual([false, true]);
    expect(fits([`${head},New part`, `${rows[0]},yes`, `${rows[1]},no`].join('\n'))).toEqual([true, false]);
    const asNew = `${head},Starter card\nPads,boot,1 day,2,starter:front-pads\nBelt,boot,1 day,2,`;
    expect(fits(asNew)).toEqual([true, false]);
  });

  it('pairs equal names one by one', () => {
    const [first] = cards;
    if (!first) throw new Error('There are no starter cards.');
    const twins = [first, { ...first, id: 'twin' }];
    expect(matchCards(twins, [...twins, first]).cards.map(({ id }) => id)).toEqual(['card-0', 'twin', null]);
  });

  it('keeps the id of a look whose words stayed, and gives a new look an id nobody has', () => {
    const [first] = cards;
    if (!first) throw new Error('There are no starter cards.');
    const before = { ...first, looks: [{ id: 'look-2', words: 'rims' }] };
    const looks = [
      { id: 'look-1', words: 'tyres' },
      { id: 'look-2', words: 'hubs' },
      { id: 'look-3', words: 'rims' },
    ];
    const [matched] = matchCards([before], [{ ...first, looks }]).cards;
    expect(matched?.card.looks.map(({ id, words }) => `${id} ${words}`)).toEqual([
      'look-1 tyres',
      'look-3 hubs',
      'look-2 rims',
    ]);
  });
});
