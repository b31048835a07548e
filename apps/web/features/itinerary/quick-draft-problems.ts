import { itineraryText } from '@halfshaft/contract';
import { readNumber, readScaled } from '../events/read-number';
import {
  isDate,
  type QuickDayDraft,
  type QuickDraft,
  type QuickLoopDraft,
  type QuickProblem,
  type QuickSettings,
} from './quick-draft';

const METRES_IN_KM = 1000;
const MOST_STAGE_METRES = 100_000;
const MOST_ROAD_METRES = 500_000;
const MOST_SERVICE_MINUTES = 300;

/** What is wrong with which field of a quick form, before anything is worked out of it. */
export function quickDraftProblems(draft: QuickDraft, settings: QuickSettings | null): QuickProblem[] {
  return [...settingsProblems(settings), ...draft.days.flatMap(dayProblems)];
}

function settingsProblems(settings: QuickSettings | null): QuickProblem[] {
  if (settings && itineraryText.safeParse({ ...settings, source: '' }).success) return [];
  const message = 'The first day, the time zone and the settings under “More” must be right first.';
  return [{ day: null, loop: null, field: 'settings', message }];
}

function dayProblems(draft: QuickDayDraft, day: number): QuickProblem[] {
  const problems: QuickProblem[] = [];
  const tell = (field: QuickProblem['field'], message: string) =>
    problems.push({ day, loop: null, field, message });
  if (!/^([01]\d|2[0-3]):[0-5]\d$/.test(draft.firstCarAt))
    tell('firstCarAt', 'Write the time of day of the first car, such as 09:00.');
  if (day > 0 && draft.date !== '' && !isDate(draft.date))
    tell('date', 'Choose the date, or leave it empty for the day after.');
  if (!isBetween(minutesOf(draft.serviceMinutes), 0, MOST_SERVICE_MINUTES))
    tell('serviceMinutes', 'Write whole minutes from 0 to 300, or leave it empty where there is no service.');
  return [...problems, ...draft.loops.flatMap((loop, index) => loopProblems(loop, day, index))];
}

function loopProblems(draft: QuickLoopDraft, day: number, loop: number): QuickProblem[] {
  const stages = stageMetres(draft.stages);
  const problems: QuickProblem[] = [];
  const tell = (field: QuickProblem['field'], message: string) =>
    problems.push({ day, loop, field, message });
  if (stages.length === 0 || !stages.every((metres) => isBetween(metres, 1, MOST_STAGE_METRES)))
    tell('stages', 'Write the km of each stage of the loop with a space between, such as 12.4 8.1.');
  if (!isBetween(readScaled(draft.roadKm, METRES_IN_KM), 0, MOST_ROAD_METRES))
    tell('roadKm', 'Write the km of road in the loop, from 0 to 500.');
  if (draft.end !== 'none' && !isBetween(minutesOf(draft.serviceMinutes), 1, MOST_SERVICE_MINUTES))
    tell('serviceMinutes', 'Write whole minutes from 1 to 300, or choose that there is no service.');
  return problems;
}

/** A comma followed by a space parts two stages; one between digits is a decimal comma. */
export function stageMetres(text: string): number[] {
  const words = text.split(/(?:[,;+/]?\s+|[;+/])/u).filter((word) => word !== '');
  return words.map((word) => readScaled(word, METRES_IN_KM));
}

export function roadMetres(text: string): number {
  return readScaled(text, METRES_IN_KM);
}

/** Nothing is no minute. */
export function minutesOf(text: string): number {
  return text.trim() === '' ? 0 : readNumber(text);
}

function isBetween(value: number, least: number, most: number): boolean {
  return Number.isSafeInteger(value) && value >= least && value <= most;
}
