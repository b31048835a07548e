/** What a spreadsheet takes for the beginning of a formula, in either width, and what it skips before one. */
const LOOKS_LIKE_FORMULA = /^'*[=+\-@\t\r\n＝＋－＠]/u;
const MADE_HARMLESS = /^'+[=+\-@\t\r\n＝＋－＠]/u;

/**
 * Text that a spreadsheet would run as a formula gets an apostrophe in front, which makes it text there. Apostrophes
 * that stand there already are kept by the same rule, so `readHarmless` always gives back what was written.
 *
 * @example
 * writeHarmless('=1+1') // "'=1+1"
 */
export function writeHarmless(text: string): string {
  return LOOKS_LIKE_FORMULA.test(text) ? `'${text}` : text;
}

/** Undoes `writeHarmless`; any other text stays as it is. */
export function readHarmless(cell: string): string {
  return MADE_HARMLESS.test(cell) ? cell.slice(1) : cell;
}
