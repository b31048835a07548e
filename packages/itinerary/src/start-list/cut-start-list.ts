import { splitCells } from '../table-cells';

/** More starters than any start list has; the rest would be a slip of the clipboard. */
export const MAX_START_LIST_ROWS = 500;

/** What separates the cells of a pasted list: the first of tab, semicolon and comma that the text has. */
export function delimiterOf(text: string): string | undefined {
  return ['\t', ';', ','].find((one) => text.includes(one));
}

/** The cells of a pasted start list, which spaces may separate too. */
export function cutStartList(text: string): string[][] {
  const delimiter = delimiterOf(text);
  const rows = MAX_START_LIST_ROWS + 1;
  if (delimiter !== undefined) return splitCells(text, delimiter, rows).rows;
  const lines = text.trimEnd().split(/\r\n|\r|\n/, rows);
  return lines.map((line) => line.trim().split(/\s+/));
}
