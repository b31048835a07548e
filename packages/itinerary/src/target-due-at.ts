import type { ControlId, EpochSeconds, Itinerary, StageId } from './model';
import { requirePoint } from './require-way';
import { timedBefore } from './timed-before';
import { stageStartAt, toWholeMinute } from './whole-minute';

/** What was written for one car at one control or stage. */
export interface ActualTime {
  /** At a control the time written there, at a stage its start. */
  at: EpochSeconds;
  /** At a stage, the time at its flying finish, once it is known. */
  finishedAt?: EpochSeconds | null;
}

/** By the printed name of the control or stage. */
export type ActualTimes = ReadonlyMap<ControlId | StageId, ActualTime>;

/**
 * When a car is due at a control under target timing: the actual time at the timed control before, minutes cut, plus
 * the target time. After a stage it counts from the stage's start or from its finish, as the itinerary says. At a stage
 * it is the start: the minute written at its control plus the gap; where no start is written yet, the road after it
 * counts from that.
 *
 * Null where the time before is not known or no target time is printed. Whole seconds.
 *
 * "Due at the next control = actual recorded time at the control before (or stage start) + target time": Motorsport UK
 * National Competition Rules 2026, chapter 13. Throws when there is no such point.
 *
 * @example
 * targetDueAt(itinerary, 4, new Map([['SS1', { at: 29_610 }]])) // 29_580 + the target time of point 4
 */
export function targetDueAt(
  itinerary: Itinerary,
  pointIndex: number,
  actuals: ActualTimes,
): EpochSeconds | null {
  const point = requirePoint('targetDueAt', itinerary, pointIndex);
  const from = timedFrom(itinerary, pointIndex, actuals);
  if (from === null) return null;
  if (point.kind === 'stage') return stageStartAt(point, from);
  return point.allowedSeconds === null ? null : toWholeMinute(from) + point.allowedSeconds;
}

function timedFrom(itinerary: Itinerary, pointIndex: number, actuals: ActualTimes): EpochSeconds | null {
  const index = timedBefore(itinerary, pointIndex);
  const before = index === null ? undefined : itinerary.points[index];
  if (!before || index === null) return null;
  const actual = actuals.get(before.id);
  if (before.kind === 'control') return actual?.at ?? null;
  if (itinerary.roadTimedFrom === 'stageFinish') return actual?.finishedAt ?? null;
  return actual?.at ?? targetDueAt(itinerary, index, actuals);
}
