import { writeHarmless } from './harmless-cell';

/** Cells with any of these are quoted, whatever the delimiter: a spreadsheet may be set to another one. */
const NEEDS_QUOTES = /[",;\t\r\n]|^\s|\s$/;

/**
 * Rows of cells as a file for a spreadsheet, by RFC 4180 with commas and CRLF. Text that a spreadsheet would run as a
 * formula is made harmless.
 *
 * @example
 * csvText([['Car', 'Part'], ['7', 'shaft, left']]) // 'Car,Part\r\n7,"shaft, left"\r\n'
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(writeCell).join(',')}\r\n`).join('');
}

function writeCell(text: string): string {
  const harmless = writeHarmless(text);
  return NEEDS_QUOTES.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
