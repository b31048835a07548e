import type { ReadingSpec } from '@halfshaft/lifing';
import { valueInWords } from '../work/reading-in-words';

/**
 * A value without its unit, for where the unit stands nearby.
 *
 * @example
 * readInWords(pads, 46) // '4.6'
 */
export function readInWords(spec: Pick<ReadingSpec, 'kind' | 'decimals'>, value: number): string {
  if (spec.kind === 'passFail') return value === 0 ? 'failed' : 'passed';
  return valueInWords({ unit: '', decimals: spec.decimals }, value);
}
