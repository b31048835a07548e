import { checkDraft } from './check-draft';
import type { Draft, DraftPoint } from './draft';
import { MAX_TABLE_ROWS } from './limits';
import type { Itinerary, ItineraryProblem, Point } from './model';
import { type ItineraryProblemCode, WARNING_CODES } from './problem-code';
import { COLUMN_HEADINGS } from './table-columns';
import { isTimeZone } from './wall-clock';

/**
 * Everything wrong with an itinerary that did not come from a table: the same rules, asked again before it is saved.
 * `row` is the 1-based place of the point in driving order, `field` the heading of the field; there is no column.
 * An empty list, or warnings only, means that it may be saved.
 *
 * @example
 * checkItinerary(itinerary).some((problem) => problem.severity === 'error') // false
 */
export function checkItinerary(itinerary: Itinerary): ItineraryProblem[] {
  if (!isTimeZone(itinerary.timeZone)) {
    return [
      whole(
        'zone-unknown',
        `“${itinerary.timeZone}” is no time zone. Choose the event's zone, such as Europe/Vienna.`,
      ),
    ];
  }
  if (itinerary.points.length === 0) {
    return [
      whole('empty-table', 'The itinerary has no control and no stage. Add the rows of the itinerary.'),
    ];
  }
  if (itinerary.points.length > MAX_TABLE_ROWS) {
    return [whole('too-many-rows', `The itinerary has more than ${MAX_TABLE_ROWS} rows. Split the event.`)];
  }
  const problems = checkDraft(draftOf(itinerary)).map(({ pointIndex, key, code, message }) => ({
    row: pointIndex === null ? null : pointIndex + 1,
    column: null,
    field: key === null ? null : COLUMN_HEADINGS[key],
    code,
    message,
    severity: severityOf(code),
  }));
  return problems.sort((one, other) => (one.row ?? 0) - (other.row ?? 0));
}

function whole(code: ItineraryProblemCode, message: string): ItineraryProblem {
  return { row: null, column: null, field: null, code, message, severity: severityOf(code) };
}

function severityOf(code: ItineraryProblemCode): 'error' | 'warning' {
  return WARNING_CODES.has(code) ? 'warning' : 'error';
}

function draftOf(itinerary: Itinerary): Draft {
  const { timeZone, roadTimedFrom, startBlocks } = itinerary;
  return { timeZone, roadTimedFrom, startBlocks, points: itinerary.points.map(draftPointOf) };
}

function draftPointOf(point: Point): DraftPoint {
  const { kind, id, name, leg, section } = point;
  const shared = {
    label: id,
    kind,
    id,
    name,
    leg,
    section,
    at: point.firstCarAt,
    unreadable: new Set<never>(),
  };
  return point.kind === 'stage'
    ? {
        ...shared,
        roles: [],
        metres: point.stageMetres,
        allowedSeconds: null,
        gapSeconds: point.gapSeconds,
        repeatOf: point.repeatOf,
      }
    : {
        ...shared,
        roles: point.roles,
        metres: point.roadMetres,
        allowedSeconds: point.allowedSeconds,
        gapSeconds: null,
        repeatOf: null,
      };
}
