import type { ItineraryProblem } from '@halfshaft/itinerary';
import { capitalise } from '@/lib/capitalise';

/**
 * Where a problem stands, as one finds it in the pasted text.
 *
 * @example
 * placeInWords({ row: 5, column: 3, field: 'SS km' }) // 'Row 5, column 3, SS km'
 */
export function placeInWords({
  row,
  column,
  field,
}: Pick<ItineraryProblem, 'row' | 'column' | 'field'>): string {
  const parts = [
    row === null ? 'The whole table' : `row ${row}`,
    column === null ? null : `column ${column}`,
    field,
  ].filter((part) => part !== null && part !== '');
  return capitalise(parts.join(', '));
}

/** Errors first, each kind in the order of the rows. */
export function errorsFirst(problems: readonly ItineraryProblem[]): ItineraryProblem[] {
  const errors = problems.filter((problem) => problem.severity === 'error');
  return [...errors, ...problems.filter((problem) => problem.severity === 'warning')];
}
