import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readStartList } from './read-start-list';

const TWO = [
  { carNumber: '14', position: 1, section: 1 },
  { carNumber: '7', position: 2, section: 1 },
];
const toldOf = (text: string, section?: number) =>
  readStartList(text, section).problems.map(({ row, column, code }) => `${row} ${column} ${code}`);

describe('readStartList', () => {
  it.each([
    ['tabs', '14\t1\n7\t2'],
    ['semicolons', '14;1\r\n7;2\r\n'],
    ['commas', '14,1\n7, 2'],
    ['spaces', '  14   1\n7 2  \n\n'],
    ['a heading', 'Car\tPosition\n14\t1\n7\t2'],
    ['empty rows', '\n14 1\n\n7 2'],
    ['a point after the position', '14 1.\n7 2.'],
    ['a byte order mark', '\uFEFF14 1\n7 2'],
  ])('reads a list with %s', (_, text) => {
    expect(readStartList(text)).toEqual({ starters: TWO, problems: [] });
  });

  it('takes the section of a row before the one of the list', () => {
    expect(readStartList('14 9\n7 2 4', 3).starters).toEqual([
      { carNumber: '14', position: 9, section: 3 },
      { carNumber: '7', position: 2, section: 4 },
    ]);
  });

  it.each([
    ['', ['null null empty-list']],
    ['Car Position', ['null null empty-list']],
    ['14 one', ['1 2 position-malformed']],
    ['14', ['1 2 position-malformed']],
    ['14 0', ['1 2 position-malformed']],
    ['14 301', ['1 2 position-malformed']],
    ['14 1.5', ['1 2 position-malformed']],
    ['14 -1', ['1 2 position-malformed']],
    ['14;1;0', ['1 3 section-malformed']],
    ['14;1;two', ['1 3 section-malformed']],
    [';1', ['1 1 car-missing']],
    ['123456789 1', ['1 1 car-malformed']],
    ['14 1 1 Elm', ['1 4 too-many-cells']],
    [';x;y;z4', ['1 1 car-missing', '1 2 position-malformed', '1 3 section-malformed', '1 4 too-many-cells']],
    ['14 1\n14 2', ['2 1 car-twice']],
    ['14 1\n7 1', ['2 2 position-twice']],
    ['Car Pos\n14 1\n\n7 1', ['4 2 position-twice']],
  ])('tells of %j where it is wrong', (text, told) => {
    expect(toldOf(text)).toEqual(told);
  });

  it('lets a car and a place come again in another section', () => {
    expect(toldOf('14 1 1\n7 2 1\n14 2 3\n7 1 3')).toEqual([]);
  });

  it('reads what is right beside what is wrong', () => {
    expect(readStartList('14 1\n7 x').starters).toEqual(TWO.slice(0, 1));
  });

  it('stops at a list of more than 500 rows, and says so', () => {
    const rows = Array.from({ length: 501 }, (_, index) => `${index + 1} 1 1`).join('\n');
    expect(toldOf(rows).at(-1)).toBe('null null too-many-rows');
  });

  it('reads back every list that is in order', () => {
    const row = fc.tuple(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 300 }));
    const rows = fc
      .uniqueArray(row, { minLength: 1, selector: ([car]) => car })
      .filter((list) => new Set(list.map(([, position]) => position)).size === list.length);
    fc.assert(
      fc.property(rows, fc.constantFrom('\t', ';', ',', ' '), (list, delimiter) => {
        const { starters, problems } = readStartList(list.map((cells) => cells.join(delimiter)).join('\n'));
        expect(problems).toEqual([]);
        expect(starters.map(({ carNumber, position }) => [Number(carNumber), position])).toEqual(list);
      }),
    );
  });

  it('never throws, and places each problem of a row in the text', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('1', '2', '0', 'A', ' ', ',', ';', '\t', '\n', '"') }),
        (text) => {
          const { starters, problems } = readStartList(text);
          expect(starters.length + problems.length).toBeGreaterThan(0);
          const last = text.split(/\r\n|\r|\n/).length;
          for (const { row } of problems) expect(row ?? 1).toBeLessThanOrEqual(last);
        },
      ),
    );
  });
});
