import { FIELDS, fieldOfHeading, HEADINGS } from './columns';
import { readHarmless } from './harmless-cell';
import type { CardField, CardTableProblem } from './model';
import { quoted } from './row-cells';

export interface ReadHeadings {
  /** 0-based columns by what they hold. */
  columns: Map<CardField, number>;
  problems: CardTableProblem[];
}

const ALL_HEADINGS = FIELDS.map((field) => HEADINGS[field]).join(', ');
const NEEDED: readonly CardField[] = ['name', 'place', 'minutes'];

/** Which column is what. A column nobody knows is told rather than dropped. `row` is counted from 1. */
export function readHeadings(cells: readonly string[], row: number): ReadHeadings {
  const columns = new Map<CardField, number>();
  const problems: CardTableProblem[] = [];
  cells.forEach((cell, index) => {
    const heading = readHarmless(cell);
    if (heading === '') return;
    const field = fieldOfHeading(heading);
    const place = { row, column: index + 1, field: field === null ? '' : HEADINGS[field] };
    if (field === null) {
      const message = `No column is called ${quoted(heading)}. Take the column out, or call it one of: ${ALL_HEADINGS}.`;
      problems.push({ ...place, code: 'headingUnknown', message });
    } else if (columns.has(field)) {
      const message = `${HEADINGS[field]} stands in column ${(columns.get(field) ?? 0) + 1} already. Take one of the two out.`;
      problems.push({ ...place, code: 'headingTwice', message });
    } else columns.set(field, index);
  });
  return { columns, problems: [...problems, ...missingHeadings(columns, row)] };
}

function missingHeadings(columns: ReadonlyMap<CardField, number>, row: number): CardTableProblem[] {
  const missing = NEEDED.filter((field) => !columns.has(field)).map((field) => HEADINGS[field]);
  if (!columns.has('every') && !columns.has('dueDate')) missing.push(HEADINGS.every);
  return missing.map((heading) => ({
    row,
    column: null,
    field: heading,
    code: 'headingMissing',
    message: `There is no column ${heading}. Add it: the first row must hold the headings.`,
  }));
}
