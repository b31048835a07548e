import type { ReadingSpec } from '@halfshaft/lifing';
import type { Reading } from '@halfshaft/worklog';

/**
 * A whole-number reading as people read it.
 *
 * @example
 * valueInWords({ unit: 'mm', decimals: 1 }, 35) // '3.5 mm'
 */
export function valueInWords(
  { unit, decimals }: Pick<ReadingSpec, 'unit' | 'decimals'>,
  value: number,
): string {
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

/**
 * The last value of each place, in one line; empty when nothing was measured.
 *
 * @example
 * readingsInWords([pads], readings) // 'Pad thickness FL 3.5 mm, FR 3.1 mm'
 */
export function readingsInWords(specs: readonly ReadingSpec[], readings: readonly Reading[]): string {
  return specs
    .flatMap((spec) => {
      const last = new Map(
        readings
          .filter(({ readingId }) => readingId === spec.id)
          .map((reading) => [reading.position, reading]),
      );
      const values = [...last.values()].map(({ position, value }) =>
        [position, spec.kind === 'passFail' ? passInWords(value) : valueInWords(spec, value)]
          .filter(Boolean)
          .join(' '),
      );
      return values.length > 0 ? [`${spec.name} ${values.join(', ')}`] : [];
    })
    .join('; ');
}

function passInWords(value: number): string {
  return value === 0 ? 'failed' : 'passed';
}
