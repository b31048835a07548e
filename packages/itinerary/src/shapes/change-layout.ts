import { readItinerary } from '../reading/read-itinerary';
import type { ItineraryShape } from './shape';

type Change = (text: string, next: (below: number) => number) => string;

/** Changes nothing but the layout: line ends, blanks, quotes, separators, runs of spaces. */
export function changeLayout(shape: ItineraryShape, next: (below: number) => number) {
  const { table } = readItinerary(shape.text, shape.options);
  const changes = { ...EVERYWHERE, ...(table?.shape === 'printed' ? PRINTED : DELIMITED) };
  const names = Object.keys(changes);
  const name = names[next(names.length)] ?? '';
  return { text: changes[name]?.(shape.text, next) ?? shape.text, what: name };
}

const atLine =
  (change: (line: string, next: (below: number) => number, text: string) => string): Change =>
  (text, next) => {
    const lines = text.split('\n');
    const at = next(lines.length);
    return lines.map((line, index) => (index === at ? change(line, next, text) : line)).join('\n');
  };

const EVERYWHERE: Record<string, Change> = {
  'line ends': (text) =>
    text.includes('\r\n') ? text.replaceAll('\r\n', '\n') : text.replaceAll('\n', '\r\n'),
  'spaces at the ends of lines': (text, next) => text.replace(/(?=\r?\n)/g, () => ' '.repeat(next(3))),
  'byte order mark': (text) => (text.startsWith('\uFEFF') ? text.slice(1) : `\uFEFF${text}`),
  'blank line': atLine((line) => `\n${line}`),
  'blank lines at the end': (text) => `${text}\n\n \n`,
  'spaces that do not break': atLine((line) => line.replaceAll(' ', '\u00A0')),
};

const PRINTED: Record<string, Change> = {
  'wider run of spaces': atLine((line, next) =>
    line.replace(/(?<=\S) {2,}(?=\S)/g, (run) => run + ' '.repeat(next(3))),
  ),
  'narrower runs of spaces': atLine((line) => line.replace(/(?<=\S) {3,}(?=\S)/g, '  ')),
  'runs of spaces to single ones': atLine((line) => line.replace(/(?<=\S) {2,}(?=\S)/g, ' ')),
  'a single space doubled': atLine((line, next) => {
    const spaces = [...line.matchAll(/(?<=\S) (?=\S)/g)].map((match) => match.index);
    const at = spaces[next(Math.max(1, spaces.length))];
    return at === undefined ? line : `${line.slice(0, at)} ${line.slice(at)}`;
  }),
  'all moved to the right': (text, next) => {
    const indent = ' '.repeat(1 + next(6));
    return text.replace(/^(?=.)/gm, indent);
  },
  'tabs for runs of spaces': atLine((line) => line.replace(/(?<=\S) {2,}(?=\S)/g, '\t')),
  'page break': atLine((line) => `\f${line}`),
};

const DELIMITED: Record<string, Change> = {
  'quotes around cells': atLine((line, _, text) => {
    const delimiter = delimiterOf(text);
    if (line.includes('"') || delimiter === '|' || isSplitByComma(text)) return line;
    const [, body = '', end = ''] = /^(.*?)(\r?)$/.exec(line) ?? [];
    return (
      body
        .split(delimiter)
        .map((cell) => (cell === '' ? cell : `"${cell}"`))
        .join(delimiter) + end
    );
  }),
  'spaces around separators': atLine((line, _, text) =>
    line.includes('"') ? line : line.replaceAll(delimiterOf(text), ` ${delimiterOf(text)} `),
  ),
  'separators at the ends of lines': (text) =>
    isSplitByComma(text) ? text : text.replace(/(?<=\S.*)(?=\r?\n)/g, delimiterOf(text)),
  'another separator': (text) =>
    text.includes('"') || isSplitByComma(text)
      ? text
      : text.replaceAll(delimiterOf(text), delimiterOf(text) === '\t' ? ';' : '\t'),
};

function delimiterOf(text: string): string {
  const counts = ['\t', ';', '|', ','].map((one) => ({ one, count: text.split(one).length }));
  return counts.sort((one, other) => other.count - one.count)[0]?.one ?? ',';
}

/** Where the separator stands inside figures too, a separator more or less is no layout but another figure. */
function isSplitByComma(text: string): boolean {
  return delimiterOf(text) === ',' && /,\d{2},\d{2},/.test(text);
}
