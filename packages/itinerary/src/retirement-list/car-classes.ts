import { foldWords } from '../pasted-list/fold-words';
import { groupByCar } from '../pasted-list/group-by-car';
import type { CarRecord } from './model';

/**
 * The classes that the cars of a list stand in, as they were written first, by name.
 *
 * @example
 * carClasses([{ carNumber: '7', className: 'R', outcome: 'finished', stop: null, reached: null, backFromSection: null }]) // ['R']
 */
export function carClasses(records: readonly CarRecord[]): string[] {
  const written = new Map<string, string>();
  for (const { className } of records) {
    const folded = foldWords(className);
    if (folded !== '' && !written.has(folded)) written.set(folded, className);
  }
  return [...written.values()].sort((one, other) => one.localeCompare(other, 'en', { numeric: true }));
}

/**
 * The rows of the cars of one class, whatever its case and punctuation. The class of a car that came back may stand in
 * any of its rows.
 */
export function recordsOfClass(records: readonly CarRecord[], className: string): CarRecord[] {
  const wanted = foldWords(className);
  const cars = new Set(
    [...groupByCar(records, ({ carNumber }) => carNumber)]
      .filter(([, own]) => own.some((record) => foldWords(record.className) === wanted))
      .map(([carNumber]) => carNumber),
  );
  return records.filter(({ carNumber }) => cars.has(carNumber));
}
