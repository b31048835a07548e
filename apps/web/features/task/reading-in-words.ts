import type { ReadingSpec } from '@halfshaft/lifing';

/**
 * A whole-number reading as people read it.
 *
 * @example
 * valueInWords({ unit: 'mm', decimals: 1 }, 35) // '3.5 mm'
 */
export function valueInWords({ unit, decimals }: Pick<ReadingSpec, 'unit' | 'decimals'>, value: number): string {
  const figures = (value / 10 ** decimals).toFixed(decimals);
  return unit === '' ? figures : `${figures} ${unit}`;
}

/**
 * What is out of order with a value, or null when nothing is.
 *
 * @example
 * limitInWords(pads, 25) // 'below 3.0 mm'
 */
export function limitInWords(spec: ReadingSpec, value: number): string | null {
  if (spec.kind === 'passFail') return value === 0 ? 'failed' : null;
  if (spec.low !== null && value < spec.low) return `below ${valueInWords(spec, spec.low)}`;
  if (spec.high !== null && value > spec.high) return `above ${valueInWords(spec, spec.high)}`;
  return null;
}

/** What is allowed, for the hint beside the box; empty when any value is. */
export function bandInWords(spec: ReadingSpec): string {
  if (spec.low !== null && spec.high !== null)
    return `${valueInWords({ ...spec, unit: '' }, spec.low)} to ${valueInWords(spec, spec.high)}`;
  if (spec.low !== null) return `at least ${valueInWords(spec, spec.low)}`;
  return spec.high === null ? '' : `at most ${valueInWords(spec, spec.high)}`;
}
