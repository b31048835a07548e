import { columnsOf } from '../pasted-list/list-shape';
import { LIST_HEADINGS, type ListColumn, RETIREMENT_SHAPE } from './list-columns';
import { CAUSE_WORDS, OUTCOME_WORDS, SOURCE_WORDS } from './list-words';
import type { CarRecord } from './model';

/**
 * The list as rows of cells, headings first, for a file. `readRetirementList` reads the same records back.
 *
 * @example
 * retirementListCells([])[0]?.[0] // 'Car'
 */
export function retirementListCells(records: readonly CarRecord[]): string[][] {
  const columns = columnsOf(RETIREMENT_SHAPE);
  const rows = records.map((record) => {
    const cells = cellsOf(record);
    return columns.map((column) => cells[column]);
  });
  return [columns.map((column) => LIST_HEADINGS[column]), ...rows];
}

function cellsOf({
  carNumber,
  className,
  outcome,
  stop,
  reached,
  backFromSection,
}: CarRecord): Record<ListColumn, string> {
  const place = stop?.place ?? reached;
  return {
    car: carNumber,
    className,
    outcome: OUTCOME_WORDS[outcome][0],
    stopped: place ? `${place.relation} ${place.pointId}` : '',
    cause: stop ? CAUSE_WORDS[stop.cause][0] : '',
    part: stop?.part ?? '',
    source: stop ? SOURCE_WORDS[stop.source][0] : '',
    backFrom: backFromSection === null ? '' : String(backFromSection),
  };
}
