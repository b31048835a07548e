import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fullStarterCards } from '../full-starter/full-starter-cards';
import { starterCards } from '../starter-cards';
import { cardsToTable } from './cards-to-table';
import { cutCells } from './cut-cells';
import { anyCard, EVERY_CAR, numbered } from './fixtures';
import { readCardTable } from './read-card-table';

const first = (name: string, more: Partial<Parameters<typeof numbered>[0]> = {}) => {
  const [card] = starterCards('front', 'gravel');
  if (!card) throw new Error('There are no starter cards.');
  return numbered({ ...card, name, ...more });
};

describe('cardsToTable', () => {
  it('writes one row a card in the units of the trade', () => {
    const wheelNuts = starterCards('front', 'gravel').find((card) => card.id === 'starter:wheel-nuts');
    const [headings, row] = cutCells(cardsToTable(wheelNuts ? [wheelNuts] : []), ',');
    const cell = (heading: string) => row?.cells[headings?.cells.indexOf(heading) ?? -1];
    expect([cell('Kind'), cell('Place'), cell('Second signature')]).toEqual([
      'job',
      'all four corners',
      'yes',
    ]);
    expect(cell('Every')).toBe('1 service');
    expect(Number(cell('Minutes'))).toBe((wheelNuts?.seconds ?? 0) / 60);
  });

  it('writes several limits, their tolerances and a date', () => {
    const intervals = [
      { counter: 'stageMetres' as const, every: 62_500, tolerance: 5000 },
      { counter: 'engineSeconds' as const, every: 9000, tolerance: 0 },
    ];
    const table = cardsToTable([first('Oil', { intervals, dateLimit: { dueAt: 1_806_451_200 } })]);
    expect(table).toContain('62.5 stage km | 2.5 engine hours,5 | 0,2027-03-31,');
  });

  it.each(EVERY_CAR)('gives every starter card of $drive drive on $surface back', ({ drive, surface }) => {
    for (const cards of [starterCards(drive, surface), fullStarterCards(drive, surface)]) {
      const table = cardsToTable(cards);
      const read = readCardTable(table);
      expect(read).toEqual({ ok: true, cards: cards.map(numbered) });
      expect(read.ok && cardsToTable(read.cards)).toBe(table);
    }
  });

  it('gives any cards back', () => {
    fc.assert(
      fc.property(fc.array(anyCard, { minLength: 1, maxLength: 4 }), (cards) => {
        expect(readCardTable(cardsToTable(cards))).toEqual({ ok: true, cards });
      }),
      { numRuns: 150 },
    );
  });

  it.each(['=1+1', '+49', '-lash', '@sum', "'=quoted", '＝1', "''+x"])(
    'makes %s harmless, and gives it back',
    (name) => {
      const table = cardsToTable([first(name, { caution: name })]);
      for (const row of cutCells(table, ',')) {
        for (const cell of row.cells) expect(cell).not.toMatch(/^[=+\-@＝]/u);
      }
      expect(readCardTable(table)).toMatchObject({ ok: true, cards: [{ name, caution: name }] });
    },
  );

  it('quotes what would fall apart under another delimiter', () => {
    expect(cardsToTable([first('Nuts;=1+1')])).toContain('"Nuts;=1+1"');
  });

  it('changes nothing it is given', () => {
    const cards = Object.freeze(starterCards('four', 'snow').map((card) => Object.freeze(card)));
    const before = JSON.stringify(cards);
    cardsToTable(cards);
    expect(JSON.stringify(cards)).toBe(before);
  });
});
