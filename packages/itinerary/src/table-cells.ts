/** Cells as the person sees them: `rows[0]` is row 1 of the pasted text, empty rows included. */
export interface TableCells {
  rows: string[][];
  /** 0-based row in which a quoted cell begins that never ends. */
  openQuoteRow: number | null;
}

/**
 * Cuts delimited text into cells, with double quotes around cells that hold the delimiter, a line break or a quote
 * (doubled). A quote inside an unquoted cell is an ordinary character. Reads at most `maxRows` rows and drops empty
 * rows at the end. White space in a cell, line breaks included, becomes single spaces.
 *
 * @example
 * splitCells('a;"b;c"\r\n', ';', 10).rows // [['a', 'b;c']]
 */
export function splitCells(text: string, delimiter: string, maxRows: number): TableCells {
  const rows: string[][] = [];
  let openQuoteRow: number | null = null;
  let position = text.startsWith('\uFEFF') ? 1 : 0;
  while (position < text.length && rows.length < maxRows) {
    const row: string[] = [];
    let atRowEnd = false;
    while (!atRowEnd) {
      const cell = readCell(text, position, delimiter);
      if (cell.open && openQuoteRow === null) openQuoteRow = rows.length;
      row.push(cell.value.replace(/\s+/gu, ' ').trim());
      position = cell.end;
      atRowEnd = text[position] !== delimiter;
      position += text.startsWith('\r\n', position) ? 2 : 1;
    }
    rows.push(row);
  }
  while (rows.at(-1)?.every((cell) => cell === '')) rows.pop();
  return { rows, openQuoteRow };
}

function readCell(
  text: string,
  start: number,
  delimiter: string,
): { value: string; end: number; open: boolean } {
  let position = start;
  while (text[position] === ' ') position += 1;
  if (text[position] !== '"') {
    const end = cellEnd(text, start, delimiter);
    return { value: text.slice(start, end), end, open: false };
  }
  let value = '';
  position += 1;
  for (;;) {
    const quote = text.indexOf('"', position);
    if (quote === -1) return { value: value + text.slice(position), end: text.length, open: true };
    value += text.slice(position, quote);
    position = quote + 1;
    if (text[position] !== '"') break;
    value += '"';
    position += 1;
  }
  const end = cellEnd(text, position, delimiter);
  return { value: value + text.slice(position, end), end, open: false };
}

function cellEnd(text: string, start: number, delimiter: string): number {
  let end = start;
  while (end < text.length && text[end] !== delimiter && text[end] !== '\n' && text[end] !== '\r') end += 1;
  return end;
}
