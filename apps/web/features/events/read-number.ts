const NUMBER = /^[-+−]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;
const NEARLY = 1e-6;

/**
 * The number a person typed, with a decimal point or comma; NaN when it is none or nothing, which the contract then
 * refuses with its own sentence.
 *
 * @example
 * readNumber('2,5') // 2.5
 */
export function readNumber(text: string): number {
  const typed = text.trim();
  return NUMBER.test(typed) ? Number(typed.replace(',', '.').replace('−', '-')) : Number.NaN;
}

/**
 * What was typed, times a factor, as a whole number where it is one but for the last binary digit: 1.1 km are 1100 m.
 * Anything else keeps its fraction, so that it is refused and never silently rounded.
 */
export function readScaled(text: string, factor: number): number {
  const scaled = readNumber(text) * factor;
  const whole = Math.round(scaled);
  // Minus zero would be another value than zero.
  return Math.abs(scaled - whole) < NEARLY ? whole + 0 : scaled;
}
