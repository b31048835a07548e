import type { ItineraryProblem } from '../model';

/** What one row is read with. */
export interface ListRow<Column extends string> {
  /** 1-based, as the person sees it. */
  row: number;
  /** The cell's text; empty where the column or the cell is missing. */
  text: (column: Column) => string;
  refuse: (column: Column, code: string, message: string) => void;
}

/** Where each column of the list stands in the pasted text. */
export type ColumnPlaces<Column extends string> = ReadonlyMap<Column, number>;

/** What is needed to read a row, beside its cells. */
export interface RowSetting<Column extends string> {
  headings: Readonly<Record<Column, string>>;
  places: ColumnPlaces<Column>;
  /** What is wrong in the row is added to it. */
  problems: ItineraryProblem[];
}

/** The reader of one row. A dash alone is an empty cell. */
export function listRow<Column extends string>(
  cells: readonly string[],
  row: number,
  { headings, places, problems }: RowSetting<Column>,
): ListRow<Column> {
  const text = (column: Column) => {
    const place = places.get(column);
    const cell = place === undefined ? '' : (cells[place] ?? '');
    return /^[-–—]$/.test(cell) ? '' : cell;
  };
  const refuse = (column: Column, code: string, message: string) => {
    const place = places.get(column);
    const at = place === undefined ? null : place + 1;
    problems.push({ row, column: at, field: headings[column], code, message, severity: 'error' });
  };
  return { row, text, refuse };
}
