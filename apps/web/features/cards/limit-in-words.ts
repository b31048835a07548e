import { amountInWords } from '@halfshaft/lifing';
import { readScaled } from '../events/read-number';
import type { LimitForm } from './card-form';
import { COUNTER_UNITS } from './units';

/**
 * A limit as far as it is typed: "60 stage km", or "… stage km" while the amount is none yet.
 *
 * @example
 * limitInWords({ counter: 'services', every: '1' }) // '1 service'
 */
export function limitInWords({ counter, every }: Pick<LimitForm, 'counter' | 'every'>): string {
  const { factor, label } = COUNTER_UNITS[counter];
  const amount = Math.round(readScaled(every, factor));
  return Number.isFinite(amount) ? amountInWords(counter, amount) : `… ${label}`;
}
