/** One row as pasted. A quote is wrong when it never ends, or when text follows it inside the cell. */
export interface CutRow {
  cells: string[];
  /** 0-based cell whose quotes are wrong; null when none is. */
  badQuote: number | null;
}

/**
 * Cuts a table into rows and cells by RFC 4180: a cell in double quotes may hold the delimiter, line breaks, and a
 * quote written twice. Rows end with any kind of line break; empty rows are kept, so that row numbers are those a
 * person counts. Cells are trimmed. White space before an opening quote is no part of the cell.
 *
 * @example
 * cutCells('a;"b;c"\r\n', ';')[0]?.cells // ['a', 'b;c']
 */
export function cutCells(text: string, delimiter: string): CutRow[] {
  const rows: CutRow[] = [];
  let at = text.startsWith('\uFEFF') ? 1 : 0;
  while (at < text.length) {
    const row: CutRow = { cells: [], badQuote: null };
    let more = true;
    while (more) {
      const cell = cutCell(text, at, delimiter);
      if (cell.bad) row.badQuote ??= row.cells.length;
      row.cells.push(cell.value.trim());
      more = text[cell.end] === delimiter;
      at = cell.end + (text.startsWith('\r\n', cell.end) ? 2 : 1);
    }
    rows.push(row);
  }
  return rows;
}

interface CutCell {
  value: string;
  end: number;
  bad: boolean;
}

function cutCell(text: string, start: number, delimiter: string): CutCell {
  let at = start;
  while (text[at] === ' ') at += 1;
  if (text[at] !== '"') {
    const end = endOfPlain(text, start, delimiter);
    return { value: text.slice(start, end), end, bad: false };
  }
  let value = '';
  for (;;) {
    const quote = text.indexOf('"', at + 1);
    if (quote === -1) return { value: value + text.slice(at + 1), end: text.length, bad: true };
    value += text.slice(at + 1, quote);
    at = quote + 1;
    if (text[at] !== '"') break;
    value += '"';
  }
  const end = endOfPlain(text, at, delimiter);
  const behind = text.slice(at, end).trim();
  return { value: value + behind, end, bad: behind !== '' };
}

function endOfPlain(text: string, start: number, delimiter: string): number {
  let end = start;
  while (end < text.length && text[end] !== delimiter && text[end] !== '\n' && text[end] !== '\r') end += 1;
  return end;
}

/** Tab, semicolon or comma: whichever cuts the headings, the first row that says something, into most cells. */
export function delimiterOf(text: string): string {
  const cellsBy = (delimiter: string) =>
    cutCells(text.slice(0, HEADINGS_WITHIN), delimiter).find((row) =>
      row.cells.some((cell) => /[\p{L}\p{N}]/u.test(cell)),
    )?.cells.length ?? 0;
  const [first = ',', ...others] = [',', ';', '\t'];
  return others.reduce((best, each) => (cellsBy(each) > cellsBy(best) ? each : best), first);
}

/** The headings stand within so many letters, blank rows before them included. */
const HEADINGS_WITHIN = 5000;
