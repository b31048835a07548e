import type { ItineraryText } from '@halfshaft/contract';
import { formatDay } from '@halfshaft/itinerary';

/** What is known before the itinerary is out, as typed. */
export interface QuickDraft {
  days: QuickDayDraft[];
}

export interface QuickDayDraft {
  /** `YYYY-MM-DD`; empty for the day after the one before, and for the first day of the event. */
  date: string;
  /** `HH:MM` */
  firstCarAt: string;
  /** Before the first stage; empty where there is no service then. */
  serviceMinutes: string;
  loops: QuickLoopDraft[];
}

/** What else a loop may be: fuel before it, a super special at its end, the stages of the loop before. */
export type QuickMark = 'refuel' | 'superSpecial' | 'again';

export interface QuickLoopDraft {
  /** `12.4 8,1`: the kilometres of each stage. */
  stages: string;
  roadKm: string;
  end: 'service' | 'remoteService' | 'none';
  serviceMinutes: string;
  marks: QuickMark[];
}

export type QuickSettings = Omit<ItineraryText, 'source'>;

export interface QuickProblem {
  /** 0-based; null for what is not of one day. */
  day: number | null;
  /** 0-based; null for what is not of one loop. */
  loop: number | null;
  field: 'stages' | 'roadKm' | 'serviceMinutes' | 'date' | 'firstCarAt' | 'settings';
  message: string;
}

/** How the times of a quick form are meant, whatever the settings were for a pasted text. */
export const QUICK_TIMING = { roadTimedFrom: 'stageStart', printedFor: 'positionOne' } as const;

export const EMPTY_LOOP: QuickLoopDraft = {
  stages: '',
  roadKm: '',
  end: 'service',
  serviceMinutes: '30',
  marks: [],
};
export const EMPTY_DAY: QuickDayDraft = {
  date: '',
  firstCarAt: '09:00',
  serviceMinutes: '',
  loops: [EMPTY_LOOP],
};
export const EMPTY_DRAFT: QuickDraft = { days: [EMPTY_DAY] };

/** The same loop once more, its stages driven again. */
export function repeatLoop(loop: QuickLoopDraft): QuickLoopDraft {
  return { ...loop, marks: [...loop.marks.filter((mark) => mark !== 'again'), 'again'] };
}

/** The same day once more, on the day after. */
export function copyDay(day: QuickDayDraft): QuickDayDraft {
  return { ...day, date: '', loops: day.loops.map((loop) => ({ ...loop, marks: [...loop.marks] })) };
}

/**
 * The date of each day: its own, else the day after the one before.
 *
 * @example
 * datesOf({ days: [EMPTY_DAY, EMPTY_DAY] }, '2026-06-12') // ['2026-06-12', '2026-06-13']
 */
export function datesOf({ days }: QuickDraft, startsOn: string): string[] {
  let next = startsOn;
  return days.map(({ date }, index) => {
    const own = index > 0 && isDate(date) ? date : next;
    next = dayAfter(own);
    return own;
  });
}

/** "Sat 13 Jun 2026"; nothing for what is no date. */
export function dateInWords(date: string): string {
  const at = Date.parse(`${date}T00:00:00Z`);
  return Number.isNaN(at) ? '' : formatDay(at / 1000, 'UTC');
}

const MILLIS_IN_DAY = 86_400_000;

function dayAfter(date: string): string {
  const at = Date.parse(`${date}T00:00:00Z`);
  return Number.isNaN(at) ? date : new Date(at + MILLIS_IN_DAY).toISOString().slice(0, 10);
}

export function isDate(text: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(`${text}T00:00:00Z`));
}
