import type { PrintedLine } from './printed-words';

const LONGEST = 45;

/**
 * Whether a line without code and figures may be the rest of a name that did not fit into its column: a few words, no
 * sentence, and, where the row above says where its name begins, standing about there.
 */
export function mayBeWrapped(text: string, start: number, above: PrintedLine | null): boolean {
  const isName =
    text.length <= LONGEST && !/\d/.test(text) && !/[:;!?]|\.$/.test(text) && /\p{L}/u.test(text);
  if (!isName || !above) return isName;
  const firstFigure = above.figures[0]?.start ?? Number.POSITIVE_INFINITY;
  return start === 0 || (start >= above.nameStart - 4 && start < Math.max(firstFigure, above.nameStart + 1));
}

/** A name and the rest of it; a hyphen where the line broke inside a word goes. */
export function joinWrapped(name: string, rest: string): string {
  if (/\p{L}-$/u.test(name) && /^\p{Ll}/u.test(rest)) return name.slice(0, -1) + rest;
  return `${name} ${rest}`.trim();
}
