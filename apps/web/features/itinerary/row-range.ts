/** A piece of a text, as a text box selects it. */
export interface TextRange {
  start: number;
  end: number;
  /** 0-based line the piece begins on: a quoted cell may hold line breaks, so rows and lines can differ. */
  line: number;
}

const CELL_STARTS_AFTER = ['\n', '\r', '\t', ';', ','];

/**
 * The piece of a pasted table that is its row `row`, counted from 1 as its problems count. A line break inside a
 * quoted cell does not end a row. The end of the text when there is no such row.
 *
 * @example
 * rowRange('a;b\nc;d', 2) // { start: 4, end: 7, line: 1 }
 */
export function rowRange(text: string, row: number): TextRange {
  let start = 0;
  let line = 0;
  for (let passed = 1; passed < row && start < text.length; passed += 1) {
    const end = rowEnd(text, start);
    line += linesIn(text.slice(start, end)) + 1;
    start = end + (text.startsWith('\r\n', end) ? 2 : 1);
  }
  const from = Math.min(start, text.length);
  return { start: from, end: rowEnd(text, from), line };
}

function rowEnd(text: string, start: number): number {
  let quoted = false;
  for (let at = start; at < text.length; at += 1) {
    const letter = text.charAt(at);
    if (letter === '"') {
      const opens = at === start || CELL_STARTS_AFTER.includes(text.charAt(at - 1));
      if (quoted || opens) quoted = !quoted;
    }
    if (!quoted && (letter === '\n' || letter === '\r')) return at;
  }
  return text.length;
}

function linesIn(text: string): number {
  return text.split(/\r\n|\r|\n/).length - 1;
}
