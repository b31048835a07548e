import type { PersonShare, SheetRow } from './sheet-rows';

/** About as many letters as a reading takes with its blanks, and a row without any details. */
const READING = 45;
const ROW = 70;
/** No column gets so narrow that its lines cannot be written on. */
const LEAST = 0.65;

/** More than this, in letters, wants the smaller print to stand on one page. */
const DENSE = 4200;

export interface PaperLayout {
  /** For `grid-template-columns`; undefined where there are not two people. */
  columns: string | undefined;
  isDense: boolean;
}

/**
 * How much there is to print, and the widths of two people's columns so that both are about as long: whoever has the
 * wordier jobs gets the wider one.
 *
 * @example
 * paperLayout(shares, looksAsIn) // { columns: '1.25fr 1fr', isDense: true }
 */
export function paperLayout(
  shares: readonly PersonShare[],
  looksAsIn: ReadonlyMap<SheetRow, string>,
): PaperLayout {
  const lengths = shares.map(({ work }) => work.reduce((sum, row) => sum + lengthOf(row, looksAsIn), ROW));
  const isDense = lengths.reduce((sum, length) => sum + length, 0) > DENSE;
  const [left = 1, right = 1] = lengths;
  const ratio = Math.min(1 / LEAST, Math.max(LEAST, left / right));
  return { isDense, columns: lengths.length === 2 ? `${ratio.toFixed(2)}fr 1fr` : undefined };
}

function lengthOf(row: SheetRow, looksAsIn: ReadonlyMap<SheetRow, string>): number {
  const { card } = row;
  if (!card) return ROW;
  const looks = looksAsIn.has(row) ? 0 : card.looks.reduce((sum, { words }) => sum + words.length, 0);
  const values = card.readings.reduce((sum, { positions }) => sum + READING * (1 + positions.length / 2), 0);
  return ROW + looks + values + card.caution.length;
}
