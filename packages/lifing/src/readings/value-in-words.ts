import type { ReadingSpec } from '../job-card';

/** A whole-number value as its unit shows it, without the unit: 35 with one decimal is "3.5". */
export function figuresOf(spec: Pick<ReadingSpec, 'decimals'>, value: number): string {
  return (value / 10 ** spec.decimals).toFixed(spec.decimals);
}

/** With the unit. */
export function valueInWords(spec: Pick<ReadingSpec, 'decimals' | 'unit'>, value: number): string {
  return spec.unit === '' ? figuresOf(spec, value) : `${figuresOf(spec, value)} ${spec.unit}`;
}

/** "Pads FL", or the name alone for a reading without positions. */
export function placeOfReading(spec: Pick<ReadingSpec, 'name'>, position: string | null): string {
  return position === null ? spec.name : `${spec.name} ${position}`;
}
