import type { Itinerary, ItineraryProblem } from '../model';
import { groupByCar } from '../pasted-list/group-by-car';
import type { Placed } from '../pasted-list/read-pasted-list';
import { LIST_HEADINGS, type ListColumn } from './list-columns';
import type { CarRecord } from './model';
import { stageMetresAtStop, stageMetresBeforeSection } from './stage-metres';

type Wrong = { column: ListColumn; code: string; message: string };

/**
 * What cannot be, of the rows of each car: a car has one row, and one more for each time it came back; it comes back
 * after it stopped, and stops after it came back.
 */
export function checkOrder(records: readonly Placed<CarRecord>[], itinerary: Itinerary): ItineraryProblem[] {
  const cars = groupByCar(records, ({ record }) => record.carNumber);
  return [...cars.values()].flatMap((rows) =>
    rows.flatMap(({ row, record }, index) => {
      const wrong =
        wrongBeside(rows[index - 1], record, itinerary) ??
        wrongAlone(record, index === rows.length - 1, itinerary);
      if (!wrong) return [];
      const { column, code, message } = wrong;
      return [{ row, column: null, field: LIST_HEADINGS[column], code, message, severity: 'error' as const }];
    }),
  );
}

/** Against the row before of the same car. */
function wrongBeside(
  before: Placed<CarRecord> | undefined,
  record: CarRecord,
  itinerary: Itinerary,
): Wrong | null {
  if (!before) return null;
  const { carNumber } = record;
  const back = before.record.backFromSection;
  if (back === null) {
    const message = `Car ${carNumber} stands in row ${before.row} already. Take one of the two out, or say there from which section it came back.`;
    return { column: 'car', code: 'car-twice', message };
  }
  if (record.outcome === 'notStarted') {
    const message = `Car ${carNumber} came back by row ${before.row}, so it did start. Say what happened then.`;
    return { column: 'outcome', code: 'started-before', message };
  }
  const place = record.stop?.place ?? record.reached;
  const stopped = place && stageMetresAtStop(itinerary, place);
  const restarted = stageMetresBeforeSection(itinerary, back);
  if (stopped === null || restarted === null || stopped >= restarted) return null;
  const message = `Car ${carNumber} came back from Section ${back} by row ${before.row}, which is further on. Mend one of the two.`;
  return { column: 'stopped', code: 'stops-too-early', message };
}

function wrongAlone(
  { carNumber, stop, backFromSection: back }: CarRecord,
  isLast: boolean,
  itinerary: Itinerary,
): Wrong | null {
  if (back === null || stop === null) return null;
  const stopped = stageMetresAtStop(itinerary, stop.place);
  const restarted = stageMetresBeforeSection(itinerary, back);
  if (stopped !== null && restarted !== null && restarted < stopped) {
    const message = `Section ${back} begins before the place where car ${carNumber} stopped. Mend one of the two.`;
    return { column: 'backFrom', code: 'back-too-early', message };
  }
  if (!isLast) return null;
  const message = `Car ${carNumber} came back from Section ${back}, and no row says what happened then. Add a row for it below.`;
  return { column: 'backFrom', code: 'end-missing', message };
}
