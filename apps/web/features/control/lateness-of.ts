import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import {
  type ControlLateness,
  type LatenessQuestion,
  latenessAlong,
  type PointTime,
  positionsOf,
  type TimeRecord,
  timesAlong,
} from '@halfshaft/itinerary';
import { type ControlTime, finishesOf, timesOf, type WorkState } from '@halfshaft/worklog';

/** What was written for a car so far, under the event's rules: what its times and its lateness are reckoned from. */
export function latenessQuestionOf(
  replica: EventReplica,
  state: WorkState,
  entry: EntryReplica,
): LatenessQuestion {
  const times = timesOf(state.times.values(), entry.entryId);
  const finishes = finishesOf(state.times.values(), entry.entryId);
  const records = replica.itinerary.points.flatMap((point, pointIndex): TimeRecord[] => {
    const time = times.get(point.id);
    if (point.kind === 'stage') return stageRecord(replica, pointIndex, time, finishes.get(point.id));
    return time ? [{ pointIndex, writtenAt: time.writtenAt, heldMinutes: time.heldMinutes }] : [];
  });
  const positions = positionsOf(entry);
  return { itinerary: replica.itinerary, positions, rules: replica.penaltyRules, records };
}

/** A finish without a start says nothing of when the car started: it counts only where the road is timed from it. */
function stageRecord(
  { itinerary, penaltyRules }: EventReplica,
  pointIndex: number,
  start: ControlTime | undefined,
  finish: ControlTime | undefined,
): TimeRecord[] {
  const finishedAt = finish?.writtenAt ?? null;
  if (start) return [{ pointIndex, writtenAt: start.writtenAt, finishedAt }];
  const isTimedFromFinish = itinerary.roadTimedFrom === 'stageFinish' && penaltyRules.timing === 'target';
  return finish && isTimedFromFinish ? [{ pointIndex, writtenAt: finish.writtenAt, finishedAt }] : [];
}

/** A car's times at every point: planned, due by what was written so far, and written. */
export function timesOfEntry(replica: EventReplica, state: WorkState, entry: EntryReplica): PointTime[] {
  return timesAlong(latenessQuestionOf(replica, state, entry));
}

/** How a car passed one control; null where no time is recorded. */
export function latenessAt(question: LatenessQuestion, pointIndex: number): ControlLateness | null {
  return latenessAlong(question).find((each) => each.pointIndex === pointIndex) ?? null;
}
