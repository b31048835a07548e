import { type Drive, fullStarterCards, readCardTable, type Surface, starterCards } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import { cardBody } from './card';

const DRIVES: Drive[] = ['front', 'rear', 'four'];
const SURFACES: Surface[] = ['gravel', 'tarmac', 'snow'];
const CARS = DRIVES.flatMap((drive) => SURFACES.map((surface) => ({ drive, surface })));

describe('a card as a person edits it', () => {
  it.each(CARS)('takes every starter card of $drive drive on $surface, and changes none', (car) => {
    const cards = [...starterCards(car.drive, car.surface), ...fullStarterCards(car.drive, car.surface)];
    expect(cards.length).toBeGreaterThan(50);
    for (const { id, ...body } of cards) {
      const read = cardBody.safeParse(body);
      expect(read.error?.issues ?? [], id).toEqual([]);
      expect(read.data, id).toEqual(body);
    }
  });

  it('takes a card with no limit, which is called for by other things', () => {
    const [first] = starterCards('front', 'gravel');
    expect(cardBody.safeParse({ ...first, intervals: [], dateLimit: null }).success).toBe(true);
    expect(cardBody.safeParse({ ...first, intervals: undefined }).success).toBe(false);
  });

  it('takes a card of an older page, which does not say whether a new part is fitted, as it is', () => {
    const pads = starterCards('front', 'gravel').find(({ id }) => id === 'starter:front-pads');
    const { fitsNewPart: _said, id: _id, ...older } = pads ?? { id: '', fitsNewPart: false };
    expect(cardBody.safeParse(older).data).toEqual(older);
  });

  it('refuses a round that fits a new part, and says what to do', () => {
    const round = starterCards('front', 'gravel').find(({ kind }) => kind === 'round');
    const problems = cardBody.safeParse({ ...round, fitsNewPart: true }).error?.issues ?? [];
    expect(problems.map(({ path, message }) => [path.join('.'), message])).toEqual([
      [
        'fitsNewPart',
        'A round fits no new part: it looks at several. Take out the tick, or make a job of it.',
      ],
    ]);
    expect(cardBody.safeParse({ ...round, fitsNewPart: false }).success).toBe(true);
  });
});

/** A table of one card with these cells, beside those every card needs. */
function readOne(cells: Record<string, string>) {
  const all = { Name: 'Nuts', Place: 'boot', Every: '1 day', Minutes: '2', ...cells };
  const quote = (cell: string) => `"${cell}"`;
  return readCardTable(`${Object.keys(all).map(quote)}\n${Object.values(all).map(quote)}`);
}

const many = (count: number, item: string) => Array(count).fill(item).join('|');
const reading = (parts: string) => ({ Readings: `Gap: wear; ${parts}` });

/** The most a cell takes, and a little more. */
const EDGES: [string, Record<string, string>, Record<string, string>][] = [
  ['the name', { Name: 'n'.repeat(80) }, { Name: 'n'.repeat(81) }],
  ['the largest limit', { Every: '10000 km' }, { Every: '10000.001 km' }],
  ['the smallest limit', { Every: '0.001 km' }, { Every: '0 km' }],
  ['limits', { Every: many(5, '1 day') }, { Every: many(6, '1 day') }],
  ['the tolerance', { Tolerance: '10000000' }, { Tolerance: '10000001' }],
  ['the date', { 'Due date': '2100-01-01' }, { 'Due date': '2100-01-01 00:00:01' }],
  ['the shortest work', { Minutes: '0.5' }, { Minutes: '0.48' }],
  ['the longest work', { Minutes: '240' }, { Minutes: '240.02' }],
  ['people', { People: '8' }, { People: '9' }],
  ['the service', { 'Shortest service (min)': '600' }, { 'Shortest service (min)': '601' }],
  ['the least of a condition', { 'Dust %': '-75' }, { 'Dust %': '-75.1' }],
  ['the most of a condition', { 'Jumps %': '400' }, { 'Jumps %': '400.1' }],
  ['looks', { Looks: many(30, 'rims') }, { Looks: many(31, 'rims') }],
  ['a look', { Looks: 'l'.repeat(120) }, { Looks: 'l'.repeat(121) }],
  ['readings', { Readings: many(12, 'Gap: wear') }, { Readings: many(13, 'Gap: wear') }],
  ['the name of a reading', { Readings: `${'r'.repeat(60)}: hint` }, { Readings: `${'r'.repeat(61)}: hint` }],
  ['the unit', reading(`unit ${'u'.repeat(12)}`), reading(`unit ${'u'.repeat(13)}`)],
  ['decimals', reading('decimals 4'), reading('decimals 5')],
  ['a value', reading('low -1000000; high 1000000'), reading('high 1000001')],
  ['a position', reading(`at ${'p'.repeat(12)}`), reading(`at ${'p'.repeat(13)}`)],
  [
    'positions',
    reading(`at ${Array(12).fill('FL').join(' ')}`),
    reading(`at ${Array(13).fill('FL').join(' ')}`),
  ],
  ['the caution', { Caution: 'c'.repeat(300) }, { Caution: 'c'.repeat(301) }],
  ['tools', { Tools: many(20, 'bar') }, { Tools: many(21, 'bar') }],
  ['a tool', { Tools: 't'.repeat(60) }, { Tools: 't'.repeat(61) }],
  ['the instruction', { Instruction: 'i'.repeat(600) }, { Instruction: 'i'.repeat(601) }],
];

describe('a card out of a table', () => {
  it.each(EDGES)('is held to the same most as in the form: %s', (_what, most, more) => {
    const read = readOne(most);
    if (!read.ok) throw new Error(read.problems[0]?.message);
    for (const card of read.cards) expect(cardBody.safeParse(card).error?.issues ?? []).toEqual([]);
    expect(readOne(more).ok).toBe(false);
  });
});
