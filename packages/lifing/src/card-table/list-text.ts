const SHORT_ESCAPES: Record<string, string> = { n: '\n', r: '\r', t: '\t' };
const ESCAPE_OF: Record<string, string> = { '\n': '\\n', '\r': '\\r', '\t': '\\t' };

/**
 * Text as one item of a list in a cell: a backslash before each of `marks` and before backslashes, and line breaks
 * written `\n`, so that `splitList` and `readItem` give it back whatever it holds.
 *
 * @example
 * writeItem('left | right', '|') // 'left \\| right'
 */
export function writeItem(text: string, marks: string): string {
  return [...text]
    .map(
      (letter) => ESCAPE_OF[letter] ?? (letter === '\\' || marks.includes(letter) ? `\\${letter}` : letter),
    )
    .join('');
}

/** Undoes `writeItem`. A backslash before any other letter stands for that letter. */
export function readItem(item: string): string {
  return item.replace(/\\([\s\S])/g, (_all, letter: string) => SHORT_ESCAPES[letter] ?? letter);
}

/**
 * The items between `marks`, trimmed, still as written; a mark behind a backslash divides nothing. Empty items are
 * left out.
 *
 * @example
 * splitList('rims | tyres', '|') // ['rims', 'tyres']
 */
export function splitList(text: string, marks: string): string[] {
  const items: string[] = [''];
  for (let at = 0; at < text.length; at += 1) {
    const letter = text.charAt(at);
    if (marks.includes(letter)) items.push('');
    else if (letter === '\\') {
      items.push((items.pop() ?? '') + text.slice(at, at + 2));
      at += 1;
    } else items.push((items.pop() ?? '') + letter);
  }
  return items.map((item) => item.trim()).filter((item) => item !== '');
}
