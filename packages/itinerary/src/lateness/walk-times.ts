import { dueAt } from '../due-at';
import type { EpochSeconds, Point, StagePoint } from '../model';
import { isTimedPoint } from '../timed-before';
import { stageStartAt, toWholeMinute } from '../whole-minute';
import { dueAtControl } from './due-at-control';
import type { LatenessQuestion, TimeRecord } from './lateness-question';

/** One point as a car meets it, and what it was reckoned from. */
export interface WalkedPoint {
  pointIndex: number;
  point: Point;
  record: TimeRecord | null;
  /** By the timetable, for this car's position: at a control the minute, at a stage the start. */
  plannedAt: EpochSeconds;
  /** By what was written before it, or may be expected from that. */
  dueAt: EpochSeconds;
  /** The question, with the one time that `dueAt` counts from as its only record. */
  from: LatenessQuestion;
}

/**
 * A car's way in driving order. Where nothing is written, the car is taken to come when it is due, and what follows
 * counts from that: so a halt that is shortened, or a regroup that sets the times anew, is felt by all that comes after.
 */
export function walkTimes(question: LatenessQuestion): WalkedPoint[] {
  const { itinerary, positions } = question;
  const records = new Map(question.records.map((record) => [record.pointIndex, record]));
  let before: TimeRecord[] = [];
  return itinerary.points.map((point, pointIndex): WalkedPoint => {
    const record = records.get(pointIndex) ?? null;
    const from = { ...question, records: before };
    const planned = dueAt(itinerary, pointIndex, positions);
    const plannedAt = point.kind === 'stage' ? planned : toWholeMinute(planned);
    const due =
      point.kind === 'stage' ? stageDue(from, point, plannedAt) : dueAtControl(from, point, pointIndex);
    // Until the first time is written the timetable counts.
    if (isTimedPoint(point) && (record !== null || before.length > 0))
      before = [record ?? { pointIndex, writtenAt: due }];
    return { pointIndex, point, record, plannedAt, dueAt: due, from };
  });
}

/** By its gap from the control before, where the timetable reckons so too; else as late as the car was before. */
function stageDue(
  { itinerary, positions, records: [before] }: LatenessQuestion,
  stage: StagePoint,
  plannedAt: EpochSeconds,
): EpochSeconds {
  if (!before) return plannedAt;
  const plannedBefore = dueAt(itinerary, before.pointIndex, positions);
  const isByGap =
    itinerary.points[before.pointIndex]?.kind === 'control' &&
    toWholeMinute(stageStartAt(stage, plannedBefore)) === toWholeMinute(plannedAt);
  if (isByGap) return stageStartAt(stage, before.writtenAt);
  return plannedAt + Math.max(0, before.writtenAt - plannedBefore);
}
