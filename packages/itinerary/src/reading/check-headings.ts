import { excerpt } from '../excerpt';
import type { ItineraryProblem } from '../model';
import { severityOf } from '../parsed-itinerary';
import type { ItineraryProblemCode } from '../problem-code';
import { COLUMN_HEADINGS, type ColumnKey } from '../table-columns';
import { headingMeaning } from './heading-meaning';
import type { CutTable, ReadItineraryOptions } from './read-itinerary-model';

/** Without these a table cannot be read; without road kilometres it can, as an event at one venue. */
const NECESSARY: readonly ColumnKey[] = ['id', 'location', 'stageKm', 'due'];

/** What is wrong with the headings of a cut table. */
export function checkHeadings(cut: CutTable, options: ReadItineraryOptions): ItineraryProblem[] {
  const problems: ItineraryProblem[] = [];
  const tell = (column: number | null, field: string | null, code: ItineraryProblemCode, message: string) =>
    problems.push({ row: cut.headingRow, column, field, code, message, severity: severityOf(code) });
  const columns = new Map<ColumnKey, number>();
  cut.headings.forEach(({ text, meaning }, index) => {
    const column = index + 1;
    if (meaning === 'surplus') return;
    if (meaning === null) {
      const cell = cut.rows.find((row) => (row.cells[index] ?? '') !== '')?.cells[index];
      if (text === '' && cell === undefined) return;
      const known = Object.values(COLUMN_HEADINGS).join(', ');
      const what =
        text === ''
          ? `Column ${column}, with “${excerpt(cell ?? '')}”, has no heading and is not read`
          : `The column “${excerpt(text)}” is not read`;
      tell(
        column,
        text,
        'column-unknown',
        `${what}. If it matters, give it one of these headings: ${known}.`,
      );
      return;
    }
    const before = columns.get(meaning);
    if (before === undefined) columns.set(meaning, index);
    else {
      const message = `“${excerpt(text)}” means the same as column ${before + 1} (“${excerpt(cut.headings[before]?.text ?? '')}”). Clear the heading of one of the two columns.`;
      tell(column, text, 'column-twice', message);
    }
    if (meaning === 'due' && headingMeaning(text).isForCarZero && options.printedFor !== 'carZero') {
      const message = `“${excerpt(text)}” says that the times are for car 0, but they were read as those of start position 1. Set the printed times to car 0, else all are a start interval early.`;
      tell(column, text, 'printed-for-car-zero', message);
    }
  });
  for (const key of NECESSARY) {
    if (columns.has(key)) continue;
    const heading = COLUMN_HEADINGS[key];
    const where = cut.headingRow === null ? '' : ` in row ${cut.headingRow}`;
    tell(
      null,
      heading,
      'column-missing',
      `The column “${heading}” is missing. Add it, with this heading${where}.`,
    );
  }
  if (!columns.has('roadKm')) {
    const message =
      'There is no column of road kilometres, so 0 km are counted between the stages. Add one, headed Road km, if the cars drive on the road.';
    tell(null, COLUMN_HEADINGS.roadKm, 'road-column-missing', message);
  }
  return problems;
}
