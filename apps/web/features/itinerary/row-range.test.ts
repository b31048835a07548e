import { describe, expect, it } from 'vitest';
import { rowRange } from './row-range';

function pieceOf(text: string, row: number): string {
  const { start, end } = rowRange(text, row);
  return text.slice(start, end);
}

describe('rowRange', () => {
  const table = 'TC/SS;Location\nTC0;Start\n\nTC1;Wald';

  it.each([
    [1, 'TC/SS;Location'],
    [2, 'TC0;Start'],
    [3, ''],
    [4, 'TC1;Wald'],
    [9, ''],
  ])('finds row %i', (row, piece) => {
    expect(pieceOf(table, row)).toBe(piece);
  });

  it('knows every kind of line end', () => {
    expect(pieceOf(table.replaceAll('\n', '\r\n'), 4)).toBe('TC1;Wald');
    expect(pieceOf(table.replaceAll('\n', '\r'), 2)).toBe('TC0;Start');
  });

  it('counts a quoted cell of two lines as one row', () => {
    const text = 'a;b\n"long\nname";2\nc;d';
    expect(pieceOf(text, 3)).toBe('c;d');
    expect(rowRange(text, 3).line).toBe(3);
  });

  it('takes an inch mark inside a cell for an ordinary character', () => {
    expect(pieceOf('a;15" wheel\nb;c\nd;e', 3)).toBe('d;e');
  });
});
