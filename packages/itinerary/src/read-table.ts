import type { TableHeader } from './find-header';
import type { ItineraryProblem } from './model';
import { nameRefuels } from './name-refuels';
import { readLeg, readTotal } from './read-leg-row';
import { readPoint } from './read-point-row';
import { createRowReader, type RowReader, tellAt } from './row-reader';
import { COLUMN_HEADINGS, type ColumnKey, columnOf } from './table-columns';
import type { TableReading, TableRow } from './table-row';

/**
 * Reads the rows under the headings: the standard shape, one control or stage a row. Problems of writing are
 * collected with their cell; what the rows mean together is not looked at here.
 */
export function readTable(cells: string[][], header: TableHeader): TableReading {
  const problems: ItineraryProblem[] = [];
  const rows: TableRow[] = [];
  const placeOf = (key: ColumnKey) => {
    const position = header.columns.get(key);
    return position === undefined
      ? { column: null, field: COLUMN_HEADINGS[key] }
      : { column: position + 1, field: header.headings[position] ?? COLUMN_HEADINGS[key] };
  };
  cells.forEach((row, index) => {
    if (index <= header.row || row.every((cell) => cell === '')) return;
    const reader = createRowReader(row, index + 1, header, placeOf, problems);
    if (isRepeatedHeader(row, header)) return;
    const surplus = checkSurplus(row, index + 1, header);
    if (surplus) {
      problems.push(surplus);
      return;
    }
    const read = readRow(row, index + 1, reader);
    if (read) rows.push(read);
  });
  nameRefuels(rows);
  return { rows, problems, placeOf };
}

/** More cells than headings: what stands under which heading is then a guess, so the row is not read. */
function checkSurplus(cells: string[], row: number, header: TableHeader): ItineraryProblem | null {
  if (cells.length <= header.headings.length) return null;
  const whole = (cell: string | undefined) => /^\d{1,3}$/.test(cell ?? '');
  const split = cells.findIndex((cell, position) => whole(cell) && whole(cells[position + 1]));
  if (header.delimiter === ',' && split !== -1) {
    const message = `“${cells[split]},${cells[split + 1]}” in row ${row} was cut in two at its comma. Put kilometres with a comma in double quotes, or separate the columns by semicolons or tabs.`;
    return tellAt(row, split + 1, header.headings[split] ?? null, 'decimal-comma', message);
  }
  const extra = cells.findIndex((cell, position) => position >= header.headings.length && cell !== '');
  if (extra === -1) return null;
  const message = `Row ${row} has more cells than there are headings. Delete the cells that are too many, or give them a heading.`;
  return tellAt(row, extra + 1, null, 'too-many-cells', message);
}

/** Long itineraries print their headings again on each page. */
function isRepeatedHeader(row: string[], header: TableHeader): boolean {
  return (
    row.filter((cell) => cell !== '').length >= 2 &&
    row.every((cell, position) => {
      const heading = header.headings[position] ?? '';
      return cell === heading || (columnOf(cell) !== null && columnOf(cell) === columnOf(heading));
    })
  );
}

function readRow(cells: string[], row: number, reader: RowReader): TableRow | null {
  const first = cells.find((cell) => cell !== '') ?? '';
  if (/^(?:(?:leg|day|event|rally|overall|grand) ?\d{0,3} )?totals?\b/i.test(first))
    return readTotal(first, row, reader);
  if (/^(?:leg|day)(?![a-z])/i.test(first))
    return readLeg(cells.filter((cell) => cell !== '').join(' '), row, reader);
  return readPoint(row, reader);
}
