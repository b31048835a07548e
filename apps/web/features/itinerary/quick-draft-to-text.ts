import { itineraryOptions } from '@halfshaft/contract';
import {
  formatClock,
  formatDay,
  type Itinerary,
  itineraryFromDays,
  itineraryToTable,
  type QuickLoop,
  readItinerary,
  sameItinerary,
} from '@halfshaft/itinerary';
import {
  datesOf,
  QUICK_TIMING,
  type QuickDraft,
  type QuickLoopDraft,
  type QuickProblem,
  type QuickSettings,
} from './quick-draft';
import { minutesOf, quickDraftProblems, roadMetres, stageMetres } from './quick-draft-problems';

export type QuickRead = { ok: true; text: string } | { ok: false; problems: QuickProblem[] };

/** The text of an itinerary made of days and loops, as if it had been pasted, or what is wrong with which field. */
export function quickDraftToText(draft: QuickDraft, settings: QuickSettings | null): QuickRead {
  const problems = quickDraftProblems(draft, settings);
  if (settings === null || problems.length > 0) return { ok: false, problems };
  const itinerary = toItinerary(draft, settings);
  const early = daysTooEarly(itinerary);
  if (early.length > 0) return { ok: false, problems: early };
  const text = withMovableDays(itinerary, settings);
  const { parsed } = read(text, settings);
  const [problem] = parsed.ok ? [] : parsed.problems;
  return problem
    ? { ok: false, problems: [{ day: null, loop: null, field: 'settings', message: problem.message }] }
    : { ok: true, text };
}

function toItinerary(draft: QuickDraft, settings: QuickSettings): Itinerary {
  const dates = datesOf(draft, settings.startsOn);
  return itineraryFromDays({
    timeZone: settings.timeZone,
    startIntervalSeconds: settings.startIntervalSeconds,
    gapSeconds: settings.defaultGapSeconds,
    days: draft.days.map((day, index) => ({
      date: dates[index] ?? settings.startsOn,
      firstCarAt: day.firstCarAt,
      serviceMinutes: minutesOf(day.serviceMinutes),
      loops: day.loops.map(toLoop),
    })),
  });
}

function toLoop(draft: QuickLoopDraft): QuickLoop {
  const metres = stageMetres(draft.stages);
  const isSpecial = (index: number) => draft.marks.includes('superSpecial') && index === metres.length - 1;
  return {
    stages: metres.map((one, index) => ({ metres: one, superSpecial: isSpecial(index) })),
    roadMetres: roadMetres(draft.roadKm),
    serviceMinutes: draft.end === 'none' ? 0 : minutesOf(draft.serviceMinutes),
    serviceKind: draft.end === 'remoteService' ? 'remoteService' : 'service',
    refuel: draft.marks.includes('refuel'),
    again: draft.marks.includes('again'),
  };
}

function daysTooEarly({ points, timeZone }: Itinerary): QuickProblem[] {
  return points.flatMap((point, index) => {
    const before = points[index - 1];
    if (!before || before.leg === point.leg || before.firstCarAt < point.firstCarAt) return [];
    const ended = `${formatClock(before.firstCarAt, timeZone)} on ${formatDay(before.firstCarAt, timeZone)}`;
    const message = `Day ${point.leg} begins before day ${before.leg} has ended, at about ${ended}. Correct its time or its date.`;
    return [{ day: point.leg - 1, loop: null, field: 'firstCarAt' as const, message }];
  });
}

/** Without dates where the days follow from their times, so that the first day can still be moved in its own field. */
function withMovableDays(itinerary: Itinerary, settings: QuickSettings): string {
  const dated = itineraryToTable(itinerary);
  const undated = dated.replace(/^(Leg \d+), .*$/gm, '$1');
  const { parsed } = read(undated, settings);
  return parsed.ok && sameItinerary(parsed.itinerary, itinerary) ? undated : dated;
}

function read(text: string, settings: QuickSettings) {
  return readItinerary(text, { ...itineraryOptions(settings), ...QUICK_TIMING });
}
