import { readTyped } from '../bay/read-typed';

/** What is measured of a tyre, with the whole units the log keeps: tenths of a millimetre, millibar. */
export const MEASURES = [
  { key: 'treadTenths', label: 'Tread', unit: 'mm', decimals: 1, most: 300 },
  { key: 'coldMillibar', label: 'Cold pressure', unit: 'bar', decimals: 3, most: 6000 },
  { key: 'hotMillibar', label: 'Hot pressure', unit: 'bar', decimals: 3, most: 6000 },
] as const;

export type MeasureKey = (typeof MEASURES)[number]['key'];
export type TypedMeasures = Record<MeasureKey, string>;
export type Measures = Record<MeasureKey, number | null>;

export const NOTHING_TYPED: TypedMeasures = { treadTenths: '', coldMillibar: '', hotMillibar: '' };

export interface ReadMeasures {
  values: Measures;
  problems: Partial<Record<MeasureKey, string>>;
}

/**
 * The boxes as they are recorded; an empty box says nothing.
 *
 * @example
 * readMeasures({ treadTenths: '6,2', coldMillibar: '1.95', hotMillibar: '' }).values // { treadTenths: 62, coldMillibar: 1950, hotMillibar: null }
 */
export function readMeasures(typed: TypedMeasures): ReadMeasures {
  const values: Measures = { treadTenths: null, coldMillibar: null, hotMillibar: null };
  const problems: ReadMeasures['problems'] = {};
  for (const { key, decimals, most, unit } of MEASURES) {
    const text = typed[key].trim();
    if (text === '') continue;
    const read = readTyped(text, { decimals });
    if (!read.ok) problems[key] = read.sentence;
    else if (read.value < 0 || read.value > most)
      problems[key] = `A value from 0 to ${most / 10 ** decimals} ${unit} is wanted. Check it.`;
    else values[key] = read.value;
  }
  return { values, problems };
}
