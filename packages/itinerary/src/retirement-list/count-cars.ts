import { groupByCar } from '../pasted-list/group-by-car';
import type { CarRecord } from './model';

/** Cars of one event. Finished, out, out for the day and not known make up the starters. */
export interface CarCounts {
  starters: number;
  finished: number;
  out: number;
  /** Did not come back. */
  outForDay: number;
  notKnown: number;
  notStarted: number;
  /** Of the starters: came back at least once. */
  cameBack: number;
  /** Stops that the team chose. */
  withdrawn: number;
}

/**
 * What became of the cars in the end, each by its last row.
 *
 * @example
 * countCars([{ carNumber: '7', className: '', outcome: 'finished', stop: null, reached: null, backFromSection: null }]).starters // 1
 */
export function countCars(records: readonly CarRecord[]): CarCounts {
  const cars = [...groupByCar(records, (record) => record.carNumber).values()];
  const endedAs = (outcome: CarRecord['outcome']) =>
    cars.filter((own) => own.at(-1)?.outcome === outcome).length;
  const notStarted = endedAs('notStarted');
  return {
    starters: cars.length - notStarted,
    finished: endedAs('finished'),
    out: endedAs('out'),
    outForDay: endedAs('outForDay'),
    notKnown: endedAs('notKnown'),
    notStarted,
    cameBack: cars.filter((own) => own.length > 1).length,
    withdrawn: records.filter(({ stop }) => stop?.cause === 'withdrawn').length,
  };
}
