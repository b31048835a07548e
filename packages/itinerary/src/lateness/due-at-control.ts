import { dueAt } from '../due-at';
import type { ControlPoint, EpochSeconds, Point } from '../model';
import { type ActualTime, targetDueAt } from '../target-due-at';
import { timedBefore } from '../timed-before';
import { toWholeMinute } from '../whole-minute';
import type { LatenessQuestion } from './lateness-question';
import type { PenaltyRules } from './penalty-rules';

/** When the car is due at a control, from what was written before it. */
export function dueAtControl(question: LatenessQuestion, point: ControlPoint, index: number): EpochSeconds {
  const { itinerary, rules, positions } = question;
  const planned = toWholeMinute(dueAt(itinerary, index, positions));
  const before = recordBefore(question, index);
  // Order and interval are set anew: the new timetable counts, and what was lost before is no debt to it.
  if (!before || point.roles.includes('regroupOut') || before.point.leg !== point.leg)
    return Math.max(planned, before?.at ?? planned);
  if (leavesService(point) && rules.serviceOut === 'asPlanned') return Math.max(planned, before.at);
  const byTarget = rules.timing === 'target' ? targetDueAt(itinerary, index, actualsOf(question)) : null;
  if (byTarget !== null) return byTarget;
  const plannedBefore = toWholeMinute(dueAt(itinerary, before.index, positions));
  return planned + Math.max(0, before.at - plannedBefore);
}

/** The earliest minute that is not penalised. */
export function earliestAtControl(
  question: LatenessQuestion,
  point: ControlPoint,
  index: number,
  due: EpochSeconds,
): EpochSeconds {
  const { itinerary, rules, positions } = question;
  if (isEarlyAllowed(point, rules)) return Number.NEGATIVE_INFINITY;
  const planned = Math.min(due, toWholeMinute(dueAt(itinerary, index, positions)));
  const before = recordBefore(question, index);
  if (!before) return due;
  if (leavesService(point)) return rules.serviceTimeMayBeGivenUp ? Math.max(planned, before.at) : due;
  if (rules.makeUpFloorPerMille === null) return due;
  const least = toWholeMinute(((point.allowedSeconds ?? 0) * rules.makeUpFloorPerMille) / 1000);
  return Math.min(due, Math.max(planned, before.at + least));
}

export function isEarlyAllowed(point: ControlPoint, rules: PenaltyRules): boolean {
  return point.roles.some((role) => rules.earlyAllowedAt.includes(role));
}

export function leavesService(point: ControlPoint): boolean {
  return point.roles.includes('serviceOut') || point.roles.includes('remoteServiceOut');
}

/** The last timed point before that has a record: the one a target time counts from, if it has one. */
function recordBefore(
  question: LatenessQuestion,
  index: number,
): { index: number; point: Point; at: EpochSeconds } | null {
  const { itinerary, records } = question;
  for (let before = timedBefore(itinerary, index); before !== null; before = timedBefore(itinerary, before)) {
    const record = records.find((one) => one.pointIndex === before);
    const point = itinerary.points[before];
    if (record && point) return { index: before, point, at: toWholeMinute(record.writtenAt) };
  }
  return null;
}

function actualsOf({ itinerary, records }: LatenessQuestion): Map<string, ActualTime> {
  return new Map(
    records.flatMap(({ pointIndex, writtenAt, finishedAt }) => {
      const point = itinerary.points[pointIndex];
      return point ? [[point.id, { at: writtenAt, finishedAt: finishedAt ?? null }] as const] : [];
    }),
  );
}
