import type { ControlPass } from './model';

const MINUTE = 60;
const MINUTES_IN_DAY = 1440;

/**
 * Whole minutes that a car lost between two controls: what it took less what it is allowed, and never more than it was late
 * at the second one. That bound keeps out what was no loss of the car: a stage start that was held back, a car let in early
 * that stood longer. Past midnight the way is taken for less than a day. Not below 0.
 *
 * A car can be late for what happened here or for what it brought along, so without both clocks (or what is allowed) only
 * a car that was in time before is told: all of its lateness is new. Null when nobody can say.
 *
 * @param allowedSeconds by the itinerary, from the first control to the second; null where it has none
 * @example
 * lostBetween({ atMinute: 540, lateMinutes: 6, … }, { atMinute: 588, lateMinutes: 9, … }, 2700) // 3: 48 minutes of 45
 */
export function lostBetween(
  before: ControlPass | undefined,
  here: ControlPass,
  allowedSeconds: number | null,
): number | null {
  if (here.lateMinutes <= 0) return 0;
  if (!before) return null;
  if (before.atMinute === null || here.atMinute === null || allowedSeconds === null)
    return before.lateMinutes <= 0 ? here.lateMinutes : null;
  const took = (here.atMinute - before.atMinute + MINUTES_IN_DAY) % MINUTES_IN_DAY;
  return Math.min(here.lateMinutes, Math.max(0, took - Math.floor(allowedSeconds / MINUTE)));
}
