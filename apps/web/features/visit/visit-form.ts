import { type Visit, visitInput } from '@halfshaft/contract';
import { formToPositions, type PositionForm } from '../events/position-form';

/** The key the form of `/try/` is kept under on this device; signing up reads it again. */
export const VISIT_KEY = 'visit';

/** As typed: a number is text until it is read. */
export interface VisitForm {
  drive: string;
  surface: string;
  people: string;
  source: string;
  startPosition: string;
  /** By section in which the order is set anew; empty where the car keeps its position. */
  laterPositions: PositionForm;
  eventName: string;
  startsOn: string;
  timeZone: string;
  roadTimedFrom: string;
  startIntervalSeconds: string;
  gapMinutes: string;
  printedFor: string;
  /** The letter of the service looked at; empty for the first one. */
  service: string;
}

export type VisitField = keyof VisitForm;

export type ReadVisit =
  | { ok: true; visit: Visit }
  /** A sentence by field. */
  | { ok: false; problems: Partial<Record<VisitField, string>> };

const SECONDS_IN_MINUTE = 60;
const GAP_SENTENCE = 'The gap must be a whole number of minutes from 1 to 30.';

export function emptyVisit(startsOn: string, timeZone: string): VisitForm {
  return {
    drive: 'four',
    surface: 'gravel',
    people: '2',
    source: '',
    startPosition: '1',
    laterPositions: {},
    eventName: '',
    startsOn,
    timeZone,
    roadTimedFrom: 'stageStart',
    startIntervalSeconds: '60',
    gapMinutes: '3',
    printedFor: 'positionOne',
    service: '',
  };
}

/** What was typed as the server takes it, or what is wrong with each field. The table itself is not read here. */
export function readVisit(form: VisitForm): ReadVisit {
  const read = visitInput.safeParse({
    drive: form.drive,
    surface: form.surface,
    people: toNumber(form.people),
    startPosition: toNumber(form.startPosition),
    positionsBySection: formToPositions(form.laterPositions),
    itinerary: {
      source: form.source,
      timeZone: form.timeZone,
      startsOn: form.startsOn,
      roadTimedFrom: form.roadTimedFrom,
      startIntervalSeconds: toNumber(form.startIntervalSeconds),
      printedFor: form.printedFor,
      defaultGapSeconds: Math.trunc(toNumber(form.gapMinutes)) * SECONDS_IN_MINUTE,
    },
  });
  const problems: Partial<Record<VisitField, string>> = {};
  if (!Number.isInteger(toNumber(form.gapMinutes))) problems.gapMinutes = GAP_SENTENCE;
  for (const issue of read.error?.issues ?? []) {
    const field = fieldOf(issue.path.map(String));
    problems[field] ??= field === 'gapMinutes' ? GAP_SENTENCE : issue.message;
  }
  return read.success && Object.keys(problems).length === 0
    ? { ok: true, visit: read.data }
    : { ok: false, problems };
}

function fieldOf(path: readonly string[]): VisitField {
  if (path.includes('positionsBySection')) return 'laterPositions';
  const name = path.at(-1);
  return name === 'defaultGapSeconds' ? 'gapMinutes' : (name as VisitField);
}

/** Not a number for empty text, which `Number` takes for 0. */
function toNumber(text: string): number {
  return text.trim() === '' ? Number.NaN : Number(text.trim());
}
