import { MAX_TABLE_ROWS } from '../limits';
import { type ParsedItinerary, refusal } from '../parsed-itinerary';
import { splitCells } from '../table-cells';
import type { ColumnKey } from '../table-columns';
import { controlCode } from './control-code';
import { type FoundHeadings, findHeadings } from './find-headings';
import { mendSplitDecimals } from './mend-split-decimals';
import { nameBlankHeadings } from './name-blank-headings';
import type { CutTable } from './read-itinerary-model';
import { legOf, sectionOf } from './row-words';
import { writtenDate } from './written-date';

const DELIMITERS = ['\t', ';', ',', '|'];
const HEADER_SEARCH_ROWS = 60;
const MAX_COLUMNS = 60;
/** Fewer known headings than this are taken for no table cut by this delimiter. */
const HEADINGS_TO_BELIEVE = 3;

type Refusal = Extract<ParsedItinerary, { ok: false }>;

/**
 * Cuts text whose cells are separated by tabs, semicolons, commas or bars; null when no row of it holds headings that
 * are. Lines above the headings are left out, but for those that open a leg; so are rulers and headings repeated.
 */
export function cutDelimited(text: string, near: string): CutTable | Refusal | null {
  const found = DELIMITERS.flatMap((delimiter) => {
    const rows = splitCells(text, delimiter, HEADER_SEARCH_ROWS).rows.map((cells) =>
      cells.slice(0, MAX_COLUMNS),
    );
    const headings = findHeadings(rows);
    return headings && headings.known >= HEADINGS_TO_BELIEVE ? [{ delimiter, ...headings }] : [];
  });
  found.sort((one, other) => other.known - one.known);
  const best = found[0];
  if (!best) return null;
  const { rows, openQuoteRow } = splitCells(text, best.delimiter, MAX_TABLE_ROWS + 1);
  if (rows.length > MAX_TABLE_ROWS) return tooManyRows();
  if (openQuoteRow !== null) {
    const message = `A quoted cell in row ${openQuoteRow + 1} never ends. Add the closing double quote or delete the opening one.`;
    return refusal('open-quote', message, openQuoteRow + 1);
  }
  const wide = rows.findIndex((cells) => cells.findLastIndex((cell) => cell !== '') >= MAX_COLUMNS);
  if (wide !== -1) {
    const message = `Row ${wide + 1} has more than ${MAX_COLUMNS} cells. Paste the itinerary table only.`;
    return refusal('too-many-cells', message, wide + 1);
  }
  return nameBlankHeadings(arrange(rows, best, near));
}

/** A text too long to be one event. */
export function tooManyRows(): Refusal {
  return refusal(
    'too-many-rows',
    `The table has more than ${MAX_TABLE_ROWS} rows, so it was not read. Paste one event only.`,
  );
}

function arrange(rows: string[][], header: FoundHeadings & { delimiter: string }, near: string): CutTable {
  const cut: CutTable = {
    shape: 'delimited',
    headingRow: header.row + 1,
    headings: header.headings.map((heading) => ({ ...heading })),
    rows: [],
    leftOut: [],
    problems: [],
  };
  const width = header.headings.length;
  const titles = rows.slice(0, header.row).flat().join(' ');
  if (saysMiles(titles, header.headings.map((heading) => heading.text).join(' '))) {
    for (const heading of cut.headings) {
      if (heading.meaning !== null && DISTANCES.has(heading.meaning)) heading.unit ??= 'miles';
    }
  }
  rows.forEach((raw, index) => {
    const sourceRow = index + 1;
    const cells = header.delimiter === ',' ? mendSplitDecimals(raw, width) : raw;
    const line = cells.filter((cell) => cell !== '').join(' ');
    if (line === '' || (index >= header.row && index < header.row + header.span)) return;
    const why = whyLeftOut(cells, line, index < header.row, header, near);
    if (why) cut.leftOut.push({ sourceRow, text: line, why });
    else cut.rows.push({ sourceRow, cells: trimEnd(cells, width) });
  });
  const widest = Math.max(width, ...cut.rows.map((row) => row.cells.length));
  while (cut.headings.length < widest) cut.headings.push({ text: '', meaning: 'surplus', unit: null });
  for (const row of cut.rows) while (row.cells.length < widest) row.cells.push('');
  return cut;
}

const DISTANCES: ReadonlySet<ColumnKey | 'surplus'> = new Set(['stageKm', 'roadKm', 'totalKm']);

/** Whether the words around a table say that its distances are miles. */
export function saysMiles(titles: string, headings: string): boolean {
  return /\bmiles\b/i.test(titles) && !/\bkms?\b|kilomet/i.test(`${titles} ${headings}`);
}

function whyLeftOut(
  cells: readonly string[],
  line: string,
  isAbove: boolean,
  header: FoundHeadings,
  near: string,
): CutTable['leftOut'][number]['why'] | null {
  if (/^[\s|:=_–—-]+$/.test(line) && /[-=_–—]{3}/.test(line)) return 'ruler';
  if (isAbove) return opensLegAbove(line, near) ? null : 'aboveTable';
  if (controlCode(line)) return null;
  const filled = cells.filter((cell) => cell !== '');
  const known = header.texts.some(
    (texts) =>
      filled.length >= 2 && cells.every((cell, column) => cell === '' || cell === (texts[column] ?? '')),
  );
  return known || (findHeadings([[...cells]])?.known ?? 0) >= HEADINGS_TO_BELIEVE ? 'repeatedHeadings' : null;
}

/** Some itineraries print leg and section above their table. Other lines up there are titles, whatever dates they hold. */
export function opensLegAbove(line: string, near: string): boolean {
  const date = writtenDate(line, near);
  if (date === 'malformed') return false;
  if (sectionOf(line) !== null || (date?.hasWeekday && date.rest === '')) return true;
  return legOf(line) !== null && (date !== null || line.length <= 30);
}

/** Empty cells beyond the headings are nothing. */
function trimEnd(cells: string[], width: number): string[] {
  const last = cells.findLastIndex((cell) => cell !== '');
  return cells.slice(0, Math.max(width, last + 1));
}
