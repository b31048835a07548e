import type { Itinerary } from '../model';
import { readPastedList } from '../pasted-list/read-pasted-list';
import { checkOrder } from './check-order';
import { RETIREMENT_SHAPE } from './list-columns';
import type { ReadRetirementList } from './model';
import { readCarRecord } from './read-car-record';

/**
 * Reads a pasted list of who started, who stopped, where and why: a row of headings in plain words, then a row for each
 * car, and one more below it for each time the car came back. Cells are separated by tabs, semicolons or commas; empty
 * rows are passed over. Stages and controls are those of the itinerary.
 *
 * @example
 * readRetirementList('Car,What happened,Where,Cause\n7,out,in SS5,off road', itinerary).records[0]?.outcome // 'out'
 */
export function readRetirementList(text: string, itinerary: Itinerary): ReadRetirementList {
  const { placed, problems } = readPastedList(text, RETIREMENT_SHAPE, (row) => readCarRecord(row, itinerary));
  // A row that could not be read may be the one that another seems to lack.
  if (problems.length === 0) problems.push(...checkOrder(placed, itinerary));
  return { records: placed.map(({ record }) => record), problems };
}
