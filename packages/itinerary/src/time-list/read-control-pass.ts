import { excerpt } from '../excerpt';
import type { Itinerary } from '../model';
import type { ListRow } from '../pasted-list/list-row';
import { pointNamed } from '../pasted-list/point-named';
import { readCarNumber } from '../pasted-list/read-car-number';
import type { ControlPass } from './model';
import { readLateness } from './read-lateness';
import type { TimeColumn } from './time-columns';

/** One row of the list; null when something in it cannot be read, which is told. */
export function readControlPass(row: ListRow<TimeColumn>, itinerary: Itinerary): ControlPass | null {
  const carNumber = readCarNumber(row);
  const controlId = controlIn(row, itinerary);
  const lateness = readLateness(row);
  if (carNumber === null || controlId === null || lateness === null) return null;
  return { carNumber, controlId, ...lateness };
}

function controlIn({ row, text, refuse }: ListRow<TimeColumn>, itinerary: Itinerary): string | null {
  const cell = text('control');
  const point = pointNamed(itinerary, cell);
  if (point?.kind === 'control') return point.id;
  const such = itinerary.points.find(({ kind }) => kind === 'control')?.id ?? 'TC1';
  if (cell === '')
    refuse(
      'control',
      'control-missing',
      `Row ${row} names no control. Write it as it is printed in the itinerary, such as ${such}.`,
    );
  else if (point)
    refuse(
      'control',
      'control-is-stage',
      `${point.id} in row ${row} is a stage. Write the control before or after it.`,
    );
  else
    refuse(
      'control',
      'control-unknown',
      `“${excerpt(cell)}” in row ${row} is no control of the itinerary. Write it as it is printed there, such as ${such}.`,
    );
  return null;
}
