import type { CombinedReason } from './combine-verdicts';
import { type ReasonNames, reasonInWords } from './reason-in-words';

/**
 * Any reason of a combined verdict as a plain sentence without a full stop, to stand after "do now:".
 *
 * @example
 * combinedReasonInWords(verdict.reasons[0], names) // 'soft brake pedal on SS4'
 */
export function combinedReasonInWords(combined: CombinedReason, names: ReasonNames): string {
  return combined.source === 'interval' ? reasonInWords(combined.reason, names) : combined.reason.words;
}
