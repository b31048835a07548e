import { type EpochSeconds, formatClock, toWholeMinute } from '@halfshaft/itinerary';

const MINUTES_IN_DAY = 1440;
const TYPED = /^(\d{1,2})\s*[:.h]?\s*(\d{2})$/;
/** Where the clocks changed between the two, the same time of day lies an hour beside. */
const SHIFTS = [0, 3600, -3600];

/**
 * The instant a typed time of day means: the one nearest to when the car is due, in the event's zone. Null where it is
 * no time of day, or the clocks leave it out that night.
 *
 * @example
 * readClock('0:04', dueAtFiveToMidnight, 'Europe/London') // nine minutes after it, on the day after
 */
export function readClock(text: string, dueAt: EpochSeconds, timeZone: string): EpochSeconds | null {
  const typed = minuteOfDay(text.trim());
  const due = minuteOfDay(formatClock(dueAt, timeZone));
  if (typed === null || due === null) return null;
  const half = MINUTES_IN_DAY / 2;
  const away = ((((typed - due + half) % MINUTES_IN_DAY) + MINUTES_IN_DAY) % MINUTES_IN_DAY) - half;
  const near = SHIFTS.map((shift) => toWholeMinute(dueAt) + away * 60 + shift);
  return near.find((at) => minuteOfDay(formatClock(at, timeZone)) === typed) ?? null;
}

function minuteOfDay(clock: string): number | null {
  const parts = TYPED.exec(clock);
  const [hours, minutes] = [Number(parts?.[1]), Number(parts?.[2])];
  return parts && hours < 24 && minutes < 60 ? hours * 60 + minutes : null;
}
