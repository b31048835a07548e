import { controlCode } from './control-code';

/** A piece of a line of text copied from a PDF, with its place in the line. */
export interface PrintedWord {
  text: string;
  start: number;
  end: number;
}

export type FigureKind = 'distance' | 'time' | 'integer' | 'dash' | 'percent' | 'malformed';

export interface Figure extends PrintedWord {
  kind: FigureKind;
}

/** A line cut into the code it begins with, words, and the figures at its end. */
export interface PrintedLine {
  code: string;
  /** As written, with the code's spaces. */
  codeText: string;
  name: string;
  nameStart: number;
  figures: Figure[];
}

/** The pieces of a line between runs of two or more spaces. */
export function piecesOf(line: string): PrintedWord[] {
  return [...line.matchAll(/\S+(?: \S+)*/g)].map(wordOf);
}

/** The words of a line. */
export function wordsOf(line: string): PrintedWord[] {
  return [...line.matchAll(/\S+/g)].map(wordOf);
}

function wordOf(match: RegExpExecArray): PrintedWord {
  return { text: match[0], start: match.index, end: match.index + match[0].length };
}

const UNIT = /^(?:kms?|mi|miles?|h|hrs?|min|uhr|am|pm)\.?\)?$/i;

/**
 * What kind of figure a word is; null when it is none. A word that was a figure before a slip of the pen (`24,3O`, `13x35`)
 * is a malformed figure and not a part of the name, so that it is reported and no other figure moves into its place.
 */
export function figureKind(word: string): FigureKind | null {
  if (/^[-–—]+$/.test(word)) return 'dash';
  if (/^\d{1,3}(?:[.,]\d+)? ?%$/.test(word)) return 'percent';
  if (/^\(?[-−]?\d{1,4}[.,]\d{1,3}\)?(?: ?(?:kms?|mi|miles?)\)?)?$/i.test(word)) return 'distance';
  if (/^\(?[-−]?\d{1,4} ?(?:kms?|mi|miles?)\)?$/i.test(word)) return 'distance';
  if (/^\d{1,2}[:h]\d{2}(?::\d{2})?(?:[+-]\d{2}:\d{2})?(?: ?(?:h|hrs?|min|uhr|am|pm))?\.?$/i.test(word))
    return 'time';
  if (/^\d{1,3} ?min\.?$/i.test(word)) return 'time';
  if (/^\d{1,3}$/.test(word)) return 'integer';
  const digits = word.replace(/\D/g, '').length;
  const mixed = /[.,:]/.test(word) || digits >= 3;
  return digits > 0 &&
    mixed &&
    word.length >= 3 &&
    word.length <= 14 &&
    digits * 2 >= word.replace(/[()]/g, '').length - 1
    ? 'malformed'
    : null;
}

/** Cuts a line at its code, its words and its figures, whether columns are parted by runs of spaces or by single ones. */
export function printedLine(line: string): PrintedLine {
  const code = controlCode(line.trim());
  const codeStart = line.length - line.trimStart().length;
  const restStart = code ? line.trimEnd().length - code.rest.length : codeStart;
  const body = line.slice(restStart).trimEnd();
  const offset = (word: PrintedWord) => ({
    ...word,
    start: word.start + restStart,
    end: word.end + restStart,
  });
  const hasColumns = piecesOf(line).length >= 3;
  const words = withUnits((hasColumns ? piecesOf(body).flatMap(splitPiece) : wordsOf(body)).map(offset));
  let from = words.length;
  while (from > 0 && figureKind(words[from - 1]?.text ?? '') !== null) from -= 1;
  if (!hasColumns) from = afterNumberOfName(words, from);
  const name = words.slice(0, from);
  return {
    code: code?.id ?? '',
    codeText: code ? line.slice(codeStart, restStart).trim() : '',
    name: name.map((word) => word.text).join(' '),
    nameStart: name[0]?.start ?? restStart,
    figures: words.slice(from).map((word) => ({ ...word, kind: figureKind(word.text) ?? 'malformed' })),
  };
}

/** Between single spaces, one whole figure before others with decimals is part of the name: "Auwald 2 12,05". */
function afterNumberOfName(words: readonly PrintedWord[], from: number): number {
  const [first, second] = [words[from], words[from + 1]].map((word) => (word ? figureKind(word.text) : null));
  const hasDecimals = words.slice(from).some((word) => figureKind(word.text) === 'distance');
  return from > 0 && first === 'integer' && second !== 'integer' && hasDecimals ? from + 1 : from;
}

/** A piece of figures is as many pieces; a piece that ends in unmistakable figures is a name and those. */
function splitPiece(piece: PrintedWord): PrintedWord[] {
  const words = wordsOf(piece.text).map((word) => ({
    ...word,
    start: word.start + piece.start,
    end: word.end + piece.start,
  }));
  const isFigure = (word: PrintedWord) => figureKind(word.text) !== null || UNIT.test(word.text);
  if (words.every(isFigure)) return words;
  let from = words.length;
  while (from > 0 && /^(?:distance|time)$/.test(figureKind(words[from - 1]?.text ?? '') ?? '')) from -= 1;
  const name = words.slice(0, from);
  const last = name.at(-1);
  if (!name[0] || !last) return words;
  return [
    { text: name.map((word) => word.text).join(' '), start: name[0].start, end: last.end },
    ...words.slice(from),
  ];
}

/** A unit behind a figure belongs to it. */
function withUnits(words: readonly PrintedWord[]): PrintedWord[] {
  const joined: PrintedWord[] = [];
  for (const word of words) {
    const before = joined.at(-1);
    if (before && UNIT.test(word.text) && /^\(?\d/.test(before.text) && figureKind(before.text) !== null) {
      joined[joined.length - 1] = { text: `${before.text} ${word.text}`, start: before.start, end: word.end };
    } else joined.push(word);
  }
  return joined;
}
