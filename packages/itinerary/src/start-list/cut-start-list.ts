import { splitCells } from '../table-cells';

/** More starters than any start list has; the rest would be a slip of the clipboard. */
export const MAX_START_LIST_ROWS = 500;

/**
 * The cells of a pasted start list. What separates them is the first of tab, semicolon and comma that the text has;
 * otherwise spaces.
 */
export function cutStartList(text: string): string[][] {
  const delimiter = ['\t', ';', ','].find((one) => text.includes(one));
  const rows = MAX_START_LIST_ROWS + 1;
  if (delimiter !== undefined) return splitCells(text, delimiter, rows).rows;
  const lines = text.trimEnd().split(/\r\n|\r|\n/, rows);
  return lines.map((line) => line.trim().split(/\s+/));
}
