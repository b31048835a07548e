import type { EpochSeconds } from '../model';
import { toWholeMinute } from '../whole-minute';
import type { LatenessQuestion } from './lateness-question';
import { walkTimes } from './walk-times';

/** When a car is, was or will be at one point: at a control the minute, at a stage its start. */
export interface PointTime {
  pointIndex: number;
  /** By the timetable, for this car's start position. */
  plannedAt: EpochSeconds;
  /** By what is written of the points before it. */
  dueAt: EpochSeconds;
  /** What was written here; null: nothing yet. */
  writtenAt: EpochSeconds | null;
  /** At a stage, what was written at its finish. */
  finishedAt: EpochSeconds | null;
  /** The best that is known: as written, else as due. */
  at: EpochSeconds;
}

/**
 * A car's times at every point of the way, in driving order: planned, due by the times written so far, and written.
 * Before the first time is written all of them are the timetable's.
 *
 * Target timing after Motorsport UK National Competition Rules 2026, chapter 13 (see `targetDueAt`); whole seconds,
 * minutes cut. Throws when no start position is set.
 *
 * @example
 * timesAlong({ itinerary, positions: new Map([[1, 12]]), rules, records: [] })[0] // { writtenAt: null, … }
 */
export function timesAlong(question: LatenessQuestion): PointTime[] {
  return walkTimes(question).map(({ pointIndex, point, record, plannedAt, dueAt }) => {
    const isControl = point.kind === 'control';
    const writtenAt = record && (isControl ? toWholeMinute(record.writtenAt) : record.writtenAt);
    const finishedAt = record?.finishedAt ?? null;
    return { pointIndex, plannedAt, dueAt, writtenAt, finishedAt, at: writtenAt ?? dueAt };
  });
}
