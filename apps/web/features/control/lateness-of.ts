import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import {
  type ControlLateness,
  type EpochSeconds,
  type LatenessQuestion,
  latenessAlong,
  positionsOf,
  type TimeRecord,
} from '@halfshaft/itinerary';
import { timesOf, type WorkState } from '@halfshaft/worklog';

/** What the controls wrote for a car so far, under the event's rules: what lateness is reckoned from. */
export function latenessQuestionOf(
  replica: EventReplica,
  state: WorkState,
  entry: EntryReplica,
): LatenessQuestion {
  const times = timesOf(state.times.values(), entry.entryId);
  const records = replica.itinerary.points.flatMap((point, pointIndex): TimeRecord[] => {
    const time = point.kind === 'control' ? times.get(point.id) : undefined;
    return time ? [{ pointIndex, writtenAt: time.writtenAt, heldMinutes: time.heldMinutes }] : [];
  });
  const positions = positionsOf(entry);
  return { itinerary: replica.itinerary, positions, rules: replica.penaltyRules, records };
}

/** How a car passed one control; null where no time is recorded. */
export function latenessAt(question: LatenessQuestion, pointIndex: number): ControlLateness | null {
  return latenessAlong(question).find((each) => each.pointIndex === pointIndex) ?? null;
}

/** The minute a car is due at a control, from what was recorded before it; what was written there changes nothing. */
export function dueFrom(question: LatenessQuestion, pointIndex: number, planned: EpochSeconds): EpochSeconds {
  const others = question.records.filter((record) => record.pointIndex !== pointIndex);
  const records = [...others, { pointIndex, writtenAt: planned }];
  return latenessAt({ ...question, records }, pointIndex)?.dueAt ?? planned;
}
