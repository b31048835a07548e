/** Half of a character that needs two units, as a cut in the middle of an emoji leaves behind. */
const HALF_CHARACTER = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;
const NUL = '\0';

/**
 * The same value with every text in it such that the database can keep it: NUL, which pastes from PDFs carry, is left
 * out, and half a character becomes the replacement sign. Nothing a person could see is lost, and no single action with
 * such a text can hold up the ones behind it.
 *
 * @example
 * mendText({ words: 'oil\0 leak' }) // { words: 'oil leak' }
 */
export function mendText(value: unknown): unknown {
  if (typeof value === 'string') return value.replaceAll(NUL, '').replace(HALF_CHARACTER, '\uFFFD');
  if (Array.isArray(value)) return value.map(mendText);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, member]) => [key, mendText(member)]));
}
