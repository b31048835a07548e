import { amountInWords } from './amount-in-words';
import type { Interval } from './model';

/**
 * How often a card is due, in words. The tolerance is not part of it: it is nothing to plan with.
 *
 * @example
 * intervalInWords({ counter: 'services', every: 1 }) // 'every service'
 * intervalInWords({ counter: 'stageMetres', every: 60_000 }) // 'every 60 stage km'
 */
export function intervalInWords(interval: Pick<Interval, 'counter' | 'every'>): string {
  return `every ${amountInWords(interval.counter, interval.every).replace(/^1 /, '')}`;
}
