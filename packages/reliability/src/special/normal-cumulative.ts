import { logNormalTail } from './log-normal-tail';

/**
 * The chance that a standard normal variable is at most z.
 *
 * @throws RangeError when z is not a number
 * @example
 * normalCumulative(1) // 0.841344746069
 */
export function normalCumulative(z: number): number {
  return Math.exp(logNormalTail(-z));
}
