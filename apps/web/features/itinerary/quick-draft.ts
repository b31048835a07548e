import { type ItineraryText, itineraryOptions, itineraryText } from '@halfshaft/contract';
import {
  itineraryFromLoops,
  itineraryToTable,
  type QuickForm,
  type QuickLoop,
  readItinerary,
} from '@halfshaft/itinerary';
import { readNumber, readScaled } from '../events/read-number';

/** What is known before the itinerary is out, as typed. */
export interface QuickDraft {
  /** `HH:MM` */
  firstCarAt: string;
  loops: QuickLoopDraft[];
}

export interface QuickLoopDraft {
  /** `12.4 8,1`: the kilometres of each stage. */
  stages: string;
  roadKm: string;
  /** Empty where the loop ends without a service. */
  serviceMinutes: string;
}

export type QuickSettings = Omit<ItineraryText, 'source'>;

export type QuickField = keyof QuickLoopDraft;

export interface QuickProblem {
  /** 0-based; null for what is not of one loop. */
  loop: number | null;
  field: QuickField | 'firstCarAt' | 'settings';
  message: string;
}

export type QuickRead = { ok: true; text: string } | { ok: false; problems: QuickProblem[] };

const METRES_IN_KM = 1000;
const MOST_STAGE_METRES = 100_000;
const MOST_ROAD_METRES = 500_000;
const MOST_SERVICE_MINUTES = 300;

/** How the times of a quick form are meant, whatever the settings were for a pasted text. */
export const QUICK_TIMING = { roadTimedFrom: 'stageStart', printedFor: 'positionOne' } as const;

export const EMPTY_LOOP: QuickLoopDraft = { stages: '', roadKm: '', serviceMinutes: '30' };
export const EMPTY_DRAFT: QuickDraft = { firstCarAt: '09:00', loops: [EMPTY_LOOP] };

/**
 * The text of an itinerary made of loops, as if it had been pasted, or what is wrong with which field. The day is left
 * to its own field, so that it can still be moved.
 */
export function quickDraftToText(draft: QuickDraft, settings: QuickSettings | null): QuickRead {
  const problems = [
    ...settingsProblems(settings),
    ...firstCarProblems(draft),
    ...draft.loops.flatMap(loopProblems),
  ];
  if (settings === null || problems.length > 0) return { ok: false, problems };
  const form: QuickForm = {
    timeZone: settings.timeZone,
    startDate: settings.startsOn,
    firstCarAt: draft.firstCarAt,
    startIntervalSeconds: settings.startIntervalSeconds,
    gapSeconds: settings.defaultGapSeconds,
    loops: draft.loops.map(toLoop),
  };
  const text = itineraryToTable(itineraryFromLoops(form)).replace(/^Leg 1, .*$/m, 'Leg 1');
  const { parsed } = readItinerary(text, { ...itineraryOptions(settings), ...QUICK_TIMING });
  const [problem] = parsed.ok ? [] : parsed.problems;
  return problem
    ? { ok: false, problems: [{ loop: null, field: 'settings', message: problem.message }] }
    : { ok: true, text };
}

function settingsProblems(settings: QuickSettings | null): QuickProblem[] {
  if (settings && itineraryText.safeParse({ ...settings, source: '' }).success) return [];
  const message = 'The first day, the time zone and the settings under “More” must be right first.';
  return [{ loop: null, field: 'settings', message }];
}

function firstCarProblems({ firstCarAt }: QuickDraft): QuickProblem[] {
  if (/^([01]\d|2[0-3]):[0-5]\d$/.test(firstCarAt)) return [];
  return [
    { loop: null, field: 'firstCarAt', message: 'Write the time of day of the first car, such as 09:00.' },
  ];
}

function loopProblems(draft: QuickLoopDraft, loop: number): QuickProblem[] {
  const stages = stageMetres(draft.stages);
  const problems: QuickProblem[] = [];
  const tell = (field: QuickField, message: string) => problems.push({ loop, field, message });
  if (stages.length === 0 || !stages.every((metres) => isBetween(metres, 1, MOST_STAGE_METRES)))
    tell('stages', 'Write the km of each stage of the loop with a space between, such as 12.4 8.1.');
  if (!isBetween(readScaled(draft.roadKm, METRES_IN_KM), 0, MOST_ROAD_METRES))
    tell('roadKm', 'Write the km of road in the loop, from 0 to 500.');
  if (!isBetween(serviceMinutes(draft), 0, MOST_SERVICE_MINUTES))
    tell('serviceMinutes', 'Write whole minutes from 0 to 300; 0 where the loop ends without a service.');
  return problems;
}

function toLoop(draft: QuickLoopDraft): QuickLoop {
  return {
    stages: stageMetres(draft.stages).map((metres) => ({ metres })),
    roadMetres: readScaled(draft.roadKm, METRES_IN_KM),
    serviceMinutes: serviceMinutes(draft),
  };
}

/** A comma followed by a space parts two stages; one between digits is a decimal comma. */
function stageMetres(text: string): number[] {
  const words = text.split(/(?:[,;+/]?\s+|[;+/])/u).filter((word) => word !== '');
  return words.map((word) => readScaled(word, METRES_IN_KM));
}

function serviceMinutes({ serviceMinutes: text }: QuickLoopDraft): number {
  return text.trim() === '' ? 0 : readNumber(text);
}

function isBetween(value: number, least: number, most: number): boolean {
  return Number.isInteger(value) && value >= least && value <= most;
}
