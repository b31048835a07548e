import { describe, expect, it } from 'vitest';
import { rowSpan } from './row-span';

const TABLE = 'head;x\n\n"two\nlines";y\nlast;z';
const cut = (row: number) => {
  const { start, end } = rowSpan(TABLE, row);
  return TABLE.slice(start, end);
};

describe('rowSpan', () => {
  it('finds rows, empty ones included, with a quoted line break inside one row', () => {
    expect([1, 2, 3, 4].map(cut)).toEqual(['head;x', '', '"two\nlines";y', 'last;z']);
  });

  it('tells the line a row begins on', () => {
    expect([1, 2, 3, 4].map((row) => rowSpan(TABLE, row).line)).toEqual([0, 1, 2, 4]);
  });

  it('gives the end of the text for a row that is not there', () => {
    expect(rowSpan(TABLE, 99)).toMatchObject({ start: TABLE.length, end: TABLE.length });
    expect(rowSpan('', 1)).toEqual({ start: 0, end: 0, line: 0 });
  });
});
