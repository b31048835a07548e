/**
 * A whole amount in a larger unit, without zeros at the end.
 *
 * @example
 * writeScaled(62_500, 1000, 3) // '62.5'
 */
export function writeScaled(amount: number, factor: number, decimals: number): string {
  return String(Number((amount / factor).toFixed(decimals)));
}

/**
 * A number as people type it, with a decimal point or comma, times `factor`, as a whole number. Null when it is no
 * number. Where `factor` divides what is counted (a metre, a second) it is rounded; a piece is not, so half a service
 * is null.
 *
 * @example
 * readScaled('2,5', 3600) // 9000
 */
export function readScaled(text: string, factor: number): number | null {
  const typed = text.trim().replace(/^\u2212/, '-');
  if (!/^[+-]?(\d{1,12}([.,]\d{0,9})?|[.,]\d{1,9})$/.test(typed)) return null;
  const scaled = Number(typed.replace(',', '.')) * factor;
  const whole = Math.round(scaled);
  if (factor === 1 && scaled !== whole) return null;
  return whole === 0 ? 0 : whole;
}
