import { type Assembly, assembleDraft, type ItineraryTableOptions } from './assemble-draft';
import { checkDraft } from './check-draft';
import { checkTotals } from './check-totals';
import type { DraftPoint } from './draft';
import { fromCarZero } from './from-car-zero';
import type { Itinerary, ItineraryProblem, Point } from './model';
import { type ParsedItinerary, refusal, severityOf } from './parsed-itinerary';
import { resolveTimes } from './resolve-times';
import type { TableReading } from './table-row';

/**
 * What a reading means: legs, sections, times, and everything that is wrong with it. Any reader of any shape of text
 * ends here, so that the same rules hold for all of them. Problems come sorted by row and column.
 */
export function interpretReading(
  reading: TableReading,
  headerProblems: ItineraryProblem[],
  options: ItineraryTableOptions,
): ParsedItinerary {
  const problems = [...headerProblems, ...reading.problems];
  const assembly = assembleDraft(reading, options);
  if (assembly.draft.points.length === 0 && !problems.some((problem) => problem.severity === 'error')) {
    return refusal(
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
  const itinerary = toItinerary(assembly, options);
  if (!itinerary || problems.some((problem) => problem.severity === 'error')) return { ok: false, problems };
  return { ok: true, itinerary, warnings: problems };
}

/** Null when a point lacks a time, which is a problem told already. */
function toItinerary({ draft }: Assembly, options: ItineraryTableOptions): Itinerary | null {
  const points = draft.points.map(toPoint);
  const known = points.filter((point) => point !== null);
  if (known.length < points.length) return null;
  const itinerary = {
    timeZone: draft.timeZone,
    roadTimedFrom: draft.roadTimedFrom,
    points: known,
    startBlocks: draft.startBlocks,
  };
  return options.printedFor === 'carZero' ? fromCarZero(itinerary) : itinerary;
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
