import { describe, expect, it } from 'vitest';
import { splitCells } from './table-cells';
import { columnOf } from './table-columns';

describe('splitCells', () => {
  it('cuts cells, quoted ones whole, and keeps empty rows between', () => {
    const text = '\uFEFFa; "b;c" ;"d ""e"""\r\n\r\n1;;"two\nlines"\n;\n';
    expect(splitCells(text, ';', 10)).toEqual({
      rows: [['a', 'b;c', 'd "e"'], [''], ['1', '', 'two lines']],
      openQuoteRow: null,
    });
  });

  it('takes a quote inside a cell as it stands', () => {
    expect(splitCells('Bay "A"\tx', '\t', 10).rows).toEqual([['Bay "A"', 'x']]);
  });

  it('reads old line ends, no more rows than asked, and finds the quote that never ends', () => {
    expect(splitCells('a\rb\rc', ',', 2).rows).toEqual([['a'], ['b']]);
    expect(splitCells('a,b\n"c,d\ne', ',', 10)).toEqual({ rows: [['a', 'b'], ['c,d e']], openQuoteRow: 1 });
    expect(splitCells('', ',', 10).rows).toEqual([]);
  });
});

describe('columnOf', () => {
  it.each([
    ['TC/SS', 'id'],
    ['tc / ss no.', 'id'],
    ['Location (stage name)', 'location'],
    ['SS Dist. [km]', 'stageKm'],
    ['Liaison km', 'roadKm'],
    ['Road/Liaison', 'roadKm'],
    ['TOTAL', 'totalKm'],
    ['Target Time', 'target'],
    ['1st car due (hh:mm)', 'due'],
    ['Gap', 'gap'],
    ['Section No', 'section'],
    ['Weather', null],
    ['', null],
  ])('takes “%s” for %s', (heading, column) => {
    expect(columnOf(heading)).toBe(column);
  });
});
