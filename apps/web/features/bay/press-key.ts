/** A key of the pad: a digit, the decimal point, or one step back. */
export type PadKey = '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | '.' | 'back';

const LONGEST = 8;

/**
 * The text after a key. A second point is passed over, and a digit beyond what any reading needs.
 *
 * @example
 * pressKey('3', '.') // '3.'
 */
export function pressKey(text: string, key: PadKey): string {
  if (key === 'back') return text.slice(0, -1);
  if (text.length >= LONGEST) return text;
  if (key !== '.') return text === '0' ? key : text + key;
  if (/[.,]/.test(text)) return text;
  return text === '' ? '0.' : `${text}.`;
}
