/** Where a row of a table begins and ends in its text, as offsets for a selection. */
export interface RowSpan {
  start: number;
  end: number;
  /** 0-based line it begins on: a quoted cell with a line break makes one row out of two lines. */
  line: number;
}

/**
 * Row `row` (1-based) of a pasted table as it stands in the text; the end of the text when there is no such row.
 *
 * @example
 * rowSpan('a;b\nc;d', 2) // { start: 4, end: 7, line: 1 }
 */
export function rowSpan(text: string, row: number): RowSpan {
  let start = 0;
  let line = 0;
  for (let passed = 1; passed < row && start < text.length; passed += 1) {
    const end = rowEnd(text, start);
    line += text.slice(start, end).split('\n').length;
    start = Math.min(end + 1, text.length);
  }
  return { start, end: rowEnd(text, start), line };
}

function rowEnd(text: string, start: number): number {
  let end = start;
  let isQuoted = false;
  while (end < text.length && (isQuoted || text[end] !== '\n')) {
    if (text[end] === '"') isQuoted = !isQuoted;
    end += 1;
  }
  return end;
}
