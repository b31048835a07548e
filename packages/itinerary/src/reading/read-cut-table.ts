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
  const isAt = (row: number | null, column: number | null) => (problem: ItineraryProblem) =>
    problem.row === row && problem.column === column;
  const rowsThere = new Set<number | null>([cut.headingRow, ...cut.rows.map((row) => row.sourceRow)]);
  const isElsewhere = (problem: ItineraryProblem) =>
    problem.row === null ||
    !rowsThere.has(problem.row) ||
    (problem.row === cut.headingRow && problem.column === null);
  return {
    shape: cut.shape,
    headingRow: cut.headingRow,
    headings: cut.headings.map((heading, index) => ({
      ...heading,
      problems: cut.headingRow === null ? [] : problems.filter(isAt(cut.headingRow, index + 1)),
    })),
    rows: cut.rows.map(({ sourceRow, cells }) => ({
      sourceRow,
      cells: cells.map((text, index) => ({ text, problems: problems.filter(isAt(sourceRow, index + 1)) })),
      problems: problems.filter(isAt(sourceRow, null)),
    })),
    leftOut: cut.leftOut,
    problems: problems.filter(isElsewhere),
  };
}
