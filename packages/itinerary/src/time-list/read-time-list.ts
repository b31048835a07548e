import type { Itinerary, ItineraryProblem } from '../model';
import { type Placed, readPastedList } from '../pasted-list/read-pasted-list';
import type { ControlPass, ReadTimeList } from './model';
import { readControlPass } from './read-control-pass';
import { TIME_SHAPE } from './time-columns';

/**
 * Reads a pasted list of times at controls: a row of headings, then a row for each car at each control, with the due time
 * and the time written there, or with the minutes late. Controls are those of the itinerary.
 *
 * @example
 * readTimeList('Car,Control,Due,Time\n7,TC3,14:05,14:07', itinerary).passes[0]?.lateMinutes // 2
 */
export function readTimeList(text: string, itinerary: Itinerary): ReadTimeList {
  const { placed, problems } = readPastedList(text, TIME_SHAPE, (row) => readControlPass(row, itinerary));
  return {
    passes: placed.map(({ record }) => record),
    problems: [...problems, ...toldTwice(placed)],
  };
}

/** A car passes a control once, so of a second row nobody could say which one holds. */
function toldTwice(placed: readonly Placed<ControlPass>[]): ItineraryProblem[] {
  const firstRows = new Map<string, number>();
  return placed.flatMap(({ row, record: { carNumber, controlId } }) => {
    const key = JSON.stringify([carNumber, controlId]);
    const first = firstRows.get(key);
    if (first === undefined) {
      firstRows.set(key, row);
      return [];
    }
    const message = `Car ${carNumber} stands at ${controlId} in row ${first} already. Take one of the two out.`;
    const field = TIME_SHAPE.headings.control;
    return [{ row, column: null, field, code: 'time-twice', message, severity: 'error' as const }];
  });
}
