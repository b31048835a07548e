import { COLUMN_HEADINGS, type ColumnKey, HEADING_WORDS } from '../table-columns';
import { controlCode } from './control-code';
import { foldWords } from './fold-words';
import { headingMeaning } from './heading-meaning';
import { type PrintedWord, piecesOf, wordsOf } from './printed-words';

export interface PrintedColumn {
  text: string;
  meaning: ColumnKey | null;
  unit: 'miles' | 'minutes' | null;
  /** Where the heading stands in its line, if columns are kept apart by runs of spaces. */
  place: { start: number; end: number } | null;
}

export interface PrintedHeader {
  columns: PrintedColumn[];
  /** Lines it takes. */
  span: 1 | 2;
}

const HEADINGS_TO_BELIEVE = 4;
const LONGEST_LINE = 1000;
const LONGEST_HEADING_WORDS = 6;
const MOST_HEADING_WORDS = 40;

/**
 * The headings in a line of text copied from a PDF, or in two lines one under the other; null when it holds none.
 * Between single spaces the words are cut so that they name the most columns.
 */
export function printedHeader(line: string, below: string): PrintedHeader | null {
  if (line.length > LONGEST_LINE || below.length > LONGEST_LINE || !mayBeHeadings(line)) return null;
  const pieces = piecesOf(line);
  const hasColumns = pieces.length >= HEADINGS_TO_BELIEVE;
  const single = hasColumns
    ? pieces.flatMap((piece) => columnsIn(piece, true))
    : columnsIn({ text: line, start: 0, end: 0 }, false);
  const isBelow = below.trim() !== '' && mayBeHeadings(below);
  const merged = isBelow && hasColumns ? mergeBelow(pieces, below) : null;
  if (merged && isHeader(merged) && knownIn(merged) > knownIn(single)) return { columns: merged, span: 2 };
  if (!isHeader(single)) return null;
  if (isBelow && isHeadingWords(below))
    return { columns: merged && knownIn(merged) === knownIn(single) ? merged : single, span: 2 };
  return { columns: single, span: 1 };
}

/** The order itineraries are published in, for a text without headings. */
export const PUBLISHED_COLUMNS: readonly PrintedColumn[] = (
  ['id', 'location', 'stageKm', 'roadKm', 'totalKm', 'target', 'due'] as const
).map((meaning) => ({ text: COLUMN_HEADINGS[meaning], meaning, unit: null, place: null }));

function mayBeHeadings(line: string): boolean {
  return !/\d[:.,]\d/.test(line) && !controlCode(line.trim());
}

function isHeader(columns: readonly PrintedColumn[]): boolean {
  const keys = new Set(columns.map((column) => column.meaning));
  return knownIn(columns) >= HEADINGS_TO_BELIEVE && (keys.has('id') || keys.has('location'));
}

function knownIn(columns: readonly PrintedColumn[]): number {
  return new Set(columns.flatMap((column) => (column.meaning === null ? [] : [column.meaning]))).size;
}

function isHeadingWords(line: string): boolean {
  const words = foldWords(line).split(' ');
  return words.every((word) => HEADING_WORDS.has(word) || /^(?:mi|miles?)$/.test(word));
}

function columnsIn(piece: PrintedWord, hasPlace: boolean): PrintedColumn[] {
  const whole = headingMeaning(piece.text);
  const place = hasPlace ? { start: piece.start, end: piece.end } : null;
  if (whole.key !== null) return [{ text: piece.text, meaning: whole.key, unit: whole.unit, place }];
  const columns = inWords(wordsOf(piece.text), hasPlace ? piece.start : null);
  if (columns.some((column) => column.meaning !== null))
    return hasPlace ? columns : columns.filter((one) => one.meaning !== null);
  return hasPlace ? [{ text: piece.text, meaning: null, unit: null, place }] : [];
}

/** The way to cut words into headings that names the most columns and leaves the fewest words over. */
function inWords(words: readonly PrintedWord[], offset: number | null): PrintedColumn[] {
  const best = new Map<string, { score: number; columns: PrintedColumn[] }>();
  const cutFrom = (from: number, taken: readonly string[]): { score: number; columns: PrintedColumn[] } => {
    if (from >= words.length) return { score: 0, columns: [] };
    const place = `${from} ${taken.toSorted().join()}`;
    const known = best.get(place);
    if (known) return known;
    let chosen: { score: number; columns: PrintedColumn[] } | null = null;
    for (let to = Math.min(words.length, from + LONGEST_HEADING_WORDS); to > from; to -= 1) {
      const column = columnOfWords(words.slice(from, to), offset);
      const isNew = column.meaning !== null && !taken.includes(column.meaning);
      if (!isNew && to > from + 1) continue;
      const rest = cutFrom(to, isNew && column.meaning !== null ? [...taken, column.meaning] : taken);
      const score = rest.score + (isNew ? 10 : -1);
      const own = isNew ? column : { ...column, meaning: null };
      if (!chosen || score > chosen.score) chosen = { score, columns: [own, ...rest.columns] };
    }
    const answer = chosen ?? { score: 0, columns: [] };
    best.set(place, answer);
    return answer;
  };
  return words.length > MOST_HEADING_WORDS ? [] : cutFrom(0, []).columns;
}

function columnOfWords(words: readonly PrintedWord[], offset: number | null): PrintedColumn {
  const text = words.map((word) => word.text).join(' ');
  const { key, unit } = headingMeaning(text);
  const [first, last] = [words[0], words.at(-1)];
  const place =
    offset === null || !first || !last ? null : { start: first.start + offset, end: last.end + offset };
  return { text, meaning: key, unit, place };
}

/** The lower line's pieces joined to the headings they stand under. */
function mergeBelow(pieces: readonly PrintedWord[], below: string): PrintedColumn[] {
  const joined = pieces.map((piece) => ({ ...piece }));
  for (const piece of piecesOf(below)) {
    const gap = (other: PrintedWord) => Math.max(other.start - piece.end, piece.start - other.end);
    const over = joined.filter((other) => gap(other) <= 1).sort((one, other) => gap(one) - gap(other))[0];
    if (over) {
      over.text += ` ${piece.text}`;
      over.start = Math.min(over.start, piece.start);
      over.end = Math.max(over.end, piece.end);
    } else joined.push(piece);
  }
  joined.sort((one, other) => one.start - other.start);
  return joined.flatMap((piece) => columnsIn(piece, true));
}
