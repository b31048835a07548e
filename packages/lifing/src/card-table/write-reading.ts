import type { ReadingSpec } from '../job-card';
import { READING_KIND_WORDS } from './choice-words';
import { writeItem } from './list-text';

/** What divides readings, their parts, and a reading's name from the rest. */
export const READING_MARKS = '|;:';
/** What divides positions, beside those. */
export const POSITION_MARKS = `${READING_MARKS} `;

/**
 * A reading as one item of its cell. Its id is left out: it is given again when the card is saved.
 *
 * @example
 * writeReading(pads) // 'Pad thickness: wear; unit mm; decimals 1; at FL FR; low 3.0; needed'
 */
export function writeReading(spec: ReadingSpec): string {
  const value = (amount: number) => (amount / 10 ** spec.decimals).toFixed(spec.decimals);
  const parts = [
    READING_KIND_WORDS[spec.kind][0],
    spec.unit === '' ? '' : `unit ${writeItem(spec.unit, READING_MARKS)}`,
    spec.decimals === 0 ? '' : `decimals ${spec.decimals}`,
    spec.positions.length === 0
      ? ''
      : `at ${spec.positions.map((position) => writeItem(position, POSITION_MARKS)).join(' ')}`,
    spec.low === null ? '' : `low ${value(spec.low)}`,
    spec.high === null ? '' : `high ${value(spec.high)}`,
    spec.required ? 'needed' : '',
  ];
  return `${writeItem(spec.name, READING_MARKS)}: ${parts.filter((part) => part !== '').join('; ')}`;
}
