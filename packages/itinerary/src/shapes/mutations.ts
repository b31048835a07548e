import { ALL_SHAPES } from './all-shapes';
import { changeFigure } from './change-figure';
import { changeLayout } from './change-layout';
import { numbersFrom } from './seeded-numbers';
import type { ItineraryShape } from './shape';

/** What a mutation touches, which says what may come of it. */
export type MutationKind = 'figure' | 'layout' | 'row' | 'anything';

export interface Mutation {
  shape: ItineraryShape;
  kind: MutationKind;
  text: string;
  /** Of a figure: whether its value changed, so that something must come of it. */
  isOtherValue: boolean;
  /** Of a row: whether it is a control or stage that went, or came twice. */
  isPointRow: boolean;
  what: string;
}

const READABLE = ALL_SHAPES.filter((shape) => shape.plain !== null);
const KINDS: readonly MutationKind[] = ['figure', 'layout', 'figure', 'row', 'anything'];

/** The mutation of a number: the same number, the same mutation. */
export function mutation(seed: number): Mutation {
  const shape = READABLE[seed % READABLE.length];
  const kind = KINDS[Math.floor(seed / READABLE.length) % KINDS.length] ?? 'anything';
  if (!shape) throw new RangeError(`mutation: there is no shape for ${seed}`);
  const next = numbersFrom(seed);
  const untouched = { shape, kind, isOtherValue: false, isPointRow: false };
  switch (kind) {
    case 'figure':
      return { ...untouched, ...changeFigure(shape, next) };
    case 'layout':
      return { ...untouched, ...changeLayout(shape, next) };
    case 'row':
      return { ...untouched, ...changeRow(shape, next) };
    default:
      return { ...untouched, ...spliceAnything(shape.text, next) };
  }
}

function changeRow({ text }: ItineraryShape, next: (below: number) => number) {
  const rows = text.split('\n');
  const at = next(rows.length);
  const row = rows[at] ?? '';
  const isPointRow = /^[\s|\d,;]*(?:[A-Z]{2,3}) ?\d+[A-Z]?\b/.test(row) && !/^[\s|]*PC/.test(row);
  if (next(2) === 0) {
    rows.splice(at, 1);
    return { text: rows.join('\n'), isPointRow, what: `row ${at + 1} dropped` };
  }
  rows.splice(at, 0, row);
  return { text: rows.join('\n'), isPointRow, what: `row ${at + 1} doubled` };
}

const SNIPPETS = [
  '"',
  ';',
  '\n',
  ',',
  '\t',
  ' ',
  '  ',
  '|',
  ':',
  '-',
  '0',
  '9',
  'SS',
  'TC1',
  'Leg 2',
  'in',
  'Total',
  '%',
  '(',
  'é',
  '\f',
];

function spliceAnything(text: string, next: (below: number) => number) {
  let spliced = text;
  const times = 1 + next(4);
  for (let time = 0; time < times; time += 1) {
    const at = next(spliced.length + 1);
    const length = next(7);
    spliced = spliced.slice(0, at) + (SNIPPETS[next(SNIPPETS.length)] ?? '') + spliced.slice(at + length);
  }
  return { text: spliced, what: `${times} splices` };
}
