import { type Assembly, assembleDraft, type ItineraryTableOptions } from './assemble-draft';
import { checkDraft } from './check-draft';
import { checkTotals } from './check-totals';
import type { DraftPoint } from './draft';
import { findHeader } from './find-header';
import { MAX_TABLE_ROWS, MAX_TEXT_CHARACTERS } from './limits';
import type { Itinerary, ItineraryProblem, Point } from './model';
import { type ItineraryProblemCode, WARNING_CODES } from './problem-code';
import { readTable } from './read-table';
import { resolveTimes } from './resolve-times';
import { splitCells } from './table-cells';
import { COLUMN_HEADINGS, NECESSARY_COLUMNS } from './table-columns';
import type { TableReading } from './table-row';
import { isCalendarDate, isTimeZone } from './wall-clock';

export type ParsedItinerary =
  | { ok: true; itinerary: Itinerary; warnings: ItineraryProblem[] }
  | { ok: false; problems: ItineraryProblem[] };

/**
 * Reads a pasted itinerary: comma, semicolon or tab separated, headings in the first row, one control or stage a
 * row, `Leg 2, 2026-06-13` rows between legs, sums checked and left out.
 *
 * Either there is an itinerary, and at most warnings; or there is none, and every problem with its row and column as
 * the person sees them. Nothing is half applied. Metres and seconds are whole; times of day are resolved in the
 * event's zone once and for all. The columns are those itineraries are published with.
 *
 * Throws when an option is no option: an unknown time zone, a date that is none.
 *
 * @example
 * parseItineraryTable('TC/SS,Location,SS km,Road km,First car due\nTC0,Start,,0,09:00',
 *   { timeZone: 'Europe/Vienna', startDate: '2026-06-12', roadTimedFrom: 'stageStart' })
 */
export function parseItineraryTable(text: string, options: ItineraryTableOptions): ParsedItinerary {
  requireOptions(options);
  if (text.length > MAX_TEXT_CHARACTERS) {
    return refuse(
      'text-too-long',
      'The text is longer than 1 MB, so it was not read. Paste the itinerary table only.',
    );
  }
  if (text.trim() === '')
    return refuse('empty-table', 'There is no table. Paste the itinerary with its headings.');
  const header = findHeader(text);
  if (!header) {
    const headings = NECESSARY_COLUMNS.map((key) => COLUMN_HEADINGS[key]).join(', ');
    return refuse(
      'header-missing',
      `The first row does not name the columns. Put these headings above the table: ${headings}.`,
      1,
    );
  }
  if (header.problems.some((problem) => problem.severity === 'error'))
    return { ok: false, problems: header.problems };
  const cells = splitCells(text, header.delimiter, MAX_TABLE_ROWS + 1);
  if (cells.rows.length > MAX_TABLE_ROWS) {
    return refuse(
      'too-many-rows',
      `The table has more than ${MAX_TABLE_ROWS} rows, so it was not read. Paste one event only.`,
    );
  }
  if (cells.openQuoteRow !== null) {
    return refuse(
      'open-quote',
      `A quoted cell in row ${cells.openQuoteRow + 1} never ends. Add the closing double quote or delete the opening one.`,
      cells.openQuoteRow + 1,
    );
  }
  return interpret(readTable(cells.rows, header), header.problems, options);
}

function interpret(
  reading: TableReading,
  headerProblems: ItineraryProblem[],
  options: ItineraryTableOptions,
): ParsedItinerary {
  const problems = [...headerProblems, ...reading.problems];
  const assembly = assembleDraft(reading, options);
  if (assembly.draft.points.length === 0 && !problems.some((problem) => problem.severity === 'error')) {
    return refuse(
      'empty-table',
      'There is no control and no stage under the headings. Paste the rows of the itinerary as well.',
    );
  }
  const clockProblems = resolveTimes(assembly.draft, assembly.written);
  problems.push(...assembly.problems, ...checkTotals(assembly, reading.placeOf));
  for (const { pointIndex, key, code, message } of [...clockProblems, ...checkDraft(assembly.draft)]) {
    const place = key === null ? { column: null, field: null } : reading.placeOf(key);
    const row = pointIndex === null ? null : (assembly.rows[pointIndex]?.row ?? null);
    problems.push({ row, ...place, code, message, severity: severityOf(code) });
  }
  problems.sort((one, other) => (one.row ?? 0) - (other.row ?? 0) || (one.column ?? 0) - (other.column ?? 0));
  const itinerary = toItinerary(assembly);
  if (!itinerary || problems.some((problem) => problem.severity === 'error')) return { ok: false, problems };
  return { ok: true, itinerary, warnings: problems };
}

function refuse(code: ItineraryProblemCode, message: string, row: number | null = null): ParsedItinerary {
  return {
    ok: false,
    problems: [{ row, column: null, field: null, code, message, severity: severityOf(code) }],
  };
}

function severityOf(code: ItineraryProblemCode): 'error' | 'warning' {
  return WARNING_CODES.has(code) ? 'warning' : 'error';
}

function requireOptions(options: ItineraryTableOptions): void {
  if (!isTimeZone(options.timeZone)) {
    throw new RangeError(`parseItineraryTable: “${options.timeZone}” is no time zone`);
  }
  if (!isCalendarDate(options.startDate)) {
    throw new RangeError(`parseItineraryTable: “${options.startDate}” is no date written YYYY-MM-DD`);
  }
}

/** Null when a point lacks a time, which is a problem told already. */
function toItinerary({ draft }: Assembly): Itinerary | null {
  const points = draft.points.map(toPoint);
  const known = points.filter((point) => point !== null);
  if (known.length < points.length) return null;
  return {
    timeZone: draft.timeZone,
    roadTimedFrom: draft.roadTimedFrom,
    points: known,
    startBlocks: draft.startBlocks,
  };
}

function toPoint({ kind, id, leg, section, name, at, ...point }: DraftPoint): Point | null {
  if (at === null) return null;
  const base = { leg, section, name, firstCarAt: at, id };
  if (kind === 'control') {
    return {
      ...base,
      kind,
      roles: point.roles,
      roadMetres: point.metres ?? 0,
      allowedSeconds: point.allowedSeconds,
    };
  }
  return {
    ...base,
    kind,
    stageMetres: point.metres ?? 0,
    gapSeconds: point.gapSeconds ?? 0,
    repeatOf: point.repeatOf,
  };
}
