import type { ColumnKey } from '../table-columns';
import { controlCode } from './control-code';
import type { CutTable } from './read-itinerary-model';

/**
 * What columns with a blank heading hold, where their cells say it beyond doubt: codes of controls, the names right
 * beside them, section numbers in the right margin.
 */
export function nameBlankHeadings(cut: CutTable): CutTable {
  const columns = new Map<ColumnKey, number>();
  cut.headings.forEach(({ meaning }, column) => {
    if (meaning !== null && meaning !== 'surplus' && !columns.has(meaning)) columns.set(meaning, column);
  });
  const blank = cut.headings.flatMap(({ text, meaning }, column) =>
    text === '' && (meaning === null || meaning === 'surplus') ? [column] : [],
  );
  const give = (key: ColumnKey, column: number | undefined) => {
    if (column === undefined || columns.has(key)) return;
    columns.set(key, column);
    cut.headings[column] = { text: '', meaning: key, unit: null };
  };
  const isMostly = (column: number, test: (cell: string) => boolean) => {
    const filled = cut.rows.map((row) => row.cells[column] ?? '').filter((cell) => cell !== '');
    return filled.length > 0 && filled.filter(test).length * 2 > filled.length;
  };
  give(
    'id',
    blank.find((column) => isMostly(column, (cell) => controlCode(cell) !== null)),
  );
  const beside = (columns.get('id') ?? -1) + 1;
  if (blank.includes(beside) && isMostly(beside, (cell) => /\p{L}{2}/u.test(cell) && !controlCode(cell))) {
    give('location', beside);
  }
  const last = cut.headings.findLastIndex((_, column) =>
    cut.rows.some((row) => (row.cells[column] ?? '') !== ''),
  );
  if (blank.includes(last) && isMostly(last, (cell) => /^\d{1,3}$/.test(cell))) give('section', last);
  return cut;
}
