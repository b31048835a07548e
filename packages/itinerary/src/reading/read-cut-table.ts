import { interpretReading } from '../interpret-reading';
import type { ItineraryProblem } from '../model';
import { checkHeadings } from './check-headings';
import type { CutTable, ItineraryRead, ReadItineraryOptions, ReadTable } from './read-itinerary-model';
import { readRows } from './read-rows';

/** What a cut table says and means: the itinerary or what is wrong, and each problem beside its cell. */
export function readCutTable(cut: CutTable, options: ReadItineraryOptions): ItineraryRead {
  const headings = checkHeadings(cut, options);
  const isUnreadable = headings.some((problem) => problem.severity === 'error');
  const parsed = isUnreadable
    ? { ok: false as const, problems: headings }
    : interpretReading(readRows(cut, options), [...cut.problems, ...headings], options);
  return { parsed, table: besideCells(cut, parsed.ok ? parsed.warnings : parsed.problems) };
}

function besideCells(cut: CutTable, problems: readonly ItineraryProblem[]): ReadTable {
  const byPlace = new Map<string, ItineraryProblem[]>();
  const rowsThere = new Set(cut.rows.map((row) => row.sourceRow));
  for (const problem of problems) {
    const place = placeOf(problem, cut.headingRow, rowsThere);
    const there = byPlace.get(place);
    if (there) there.push(problem);
    else byPlace.set(place, [problem]);
  }
  const at = (place: string) => byPlace.get(place) ?? [];
  return {
    shape: cut.shape,
    headingRow: cut.headingRow,
    headings: cut.headings.map((heading, index) => ({ ...heading, problems: at(`heading ${index + 1}`) })),
    rows: cut.rows.map(({ sourceRow, cells }) => ({
      sourceRow,
      cells: cells.map((text, index) => ({ text, problems: at(`${sourceRow} ${index + 1}`) })),
      problems: at(`${sourceRow}`),
    })),
    leftOut: cut.leftOut,
    problems: at('whole'),
  };
}

function placeOf(
  { row, column }: ItineraryProblem,
  headingRow: number | null,
  rowsThere: ReadonlySet<number>,
): string {
  if (row !== null && row === headingRow && column !== null) return `heading ${column}`;
  if (row === null || !rowsThere.has(row)) return 'whole';
  return column === null ? `${row}` : `${row} ${column}`;
}
