import { maxLateMinutes } from '@halfshaft/contract';

/**
 * The maximum lateness somebody typed, in minutes; null when it is no whole number from 0 to half a day.
 *
 * @example
 * readMaximum('15') // 15
 */
export function readMaximum(typed: string): number | null {
  const digits = typed.trim();
  const read = maxLateMinutes.safeParse(/^\d+$/.test(digits) ? Number(digits) : Number.NaN);
  return read.success ? read.data : null;
}
