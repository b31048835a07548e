import { dueAtBySection } from '../due-at-by-section';
import type { ControlId, ControlPoint, EpochSeconds, Itinerary, Point } from '../model';
import type { PositionsBySection } from '../position-in';
import { requirePoint } from '../require-way';
import { type ActualTime, targetDueAt } from '../target-due-at';
import { timedBefore } from '../timed-before';
import { toWholeMinute } from '../whole-minute';
import { isMainControl, isWayOut, resetAt } from './lateness-resets';
import type { PenaltyRules } from './penalty-rules';

/** What was written at a control, or the start (and finish) of a stage. */
export interface TimeRecord {
  pointIndex: number;
  /** At a control what it wrote, at a stage its start. */
  writtenAt: EpochSeconds;
  /** At a stage, its flying finish. */
  finishedAt?: EpochSeconds | null;
  /** Of the minutes lost on the way here, those the event cost: a delayed stage, a queue, a closed road. */
  heldMinutes?: number;
}

export interface LatenessQuestion {
  itinerary: Itinerary;
  /** Start positions by the section they hold from. */
  positions: PositionsBySection;
  rules: PenaltyRules;
  /** In any order; a control without a record is one the car has not been written at yet. */
  records: readonly TimeRecord[];
}

/** One control as it was passed. All minutes are whole and not below 0. */
export interface ControlLateness {
  pointIndex: number;
  id: ControlId;
  section: number;
  dueAt: EpochSeconds;
  /** The minute written. */
  writtenAt: EpochSeconds;
  /** Lost since the control before: by us, and through the event. */
  ourMinutes: number;
  heldMinutes: number;
  /** Too early, and penalised. */
  earlyMinutes: number;
  /** Before the due minute as the rules allow: an early check-in, time made up, service time given up. */
  allowedEarlyMinutes: number;
  penaltySeconds: number;
  /** Lateness counted to the maximum, this control included: in this section, and since the last reset. */
  sectionMinutes: number;
  totalMinutes: number;
  /** Which maximum is passed here; empty where none is. */
  over: ('atControl' | 'inSection' | 'inTotal' | 'early')[];
}

/**
 * What the written times of a car mean under the event's rules: for each control with a record, in driving order, when
 * the car was due, who lost what, the penalty, and how much of the maximum is used.
 *
 * Lateness has two parts: what we lost and what the event cost. Only ours is penalised and, unless the rules say
 * otherwise, counted. Arriving early never reduces what is counted; making up time does, where the rules allow it.
 * Whole minutes are cut.
 *
 * Methods: Motorsport UK National Competition Rules 2026, chapter 13, and common practice. Throws when a record names
 * no point, or no start position is set.
 *
 * @example
 * latenessAlong({ itinerary, positions: new Map([[1, 12]]), rules, records: [{ pointIndex: 1, writtenAt: 29_700 }] })
 */
export function latenessAlong(question: LatenessQuestion): ControlLateness[] {
  const { itinerary, rules } = question;
  const records = question.records.toSorted((one, other) => one.pointIndex - other.pointIndex);
  const along: ControlLateness[] = [];
  const used = { section: 0, inSection: 0, inTotal: 0, early: 0 };
  let next = 0;
  itinerary.points.forEach((point, index) => {
    const reset = resetAt(itinerary, index, rules);
    if (reset?.when === 'beforeIt') used.inTotal = 0;
    if (point.section !== used.section) Object.assign(used, { section: point.section, inSection: 0 });
    const record = records[next]?.pointIndex === index ? records[next] : undefined;
    if (record) next += 1;
    if (record && point.kind === 'control') along.push(passControl(question, point, record, used));
    if (reset?.when === 'afterIt') used.inTotal = 0;
  });
  const lost = records[next];
  if (lost) requirePoint('latenessAlong', itinerary, lost.pointIndex);
  if (lost) throw new RangeError(`latenessAlong: point ${lost.pointIndex} is recorded twice`);
  return along;
}

/** Counted so far. */
interface Used {
  section: number;
  inSection: number;
  inTotal: number;
  early: number;
}

function passControl(
  question: LatenessQuestion,
  point: ControlPoint,
  record: TimeRecord,
  used: Used,
): ControlLateness {
  const { rules } = question;
  const writtenAt = toWholeMinute(record.writtenAt);
  const dueAt = dueAtControl(question, point, record.pointIndex);
  const lateMinutes = minutes(writtenAt - dueAt);
  const heldMinutes = Math.min(lateMinutes, record.heldMinutes ?? 0);
  const ourMinutes = lateMinutes - heldMinutes;
  const earliestAt = earliestAtControl(question, point, record.pointIndex, dueAt);
  const earlyMinutes = minutes(earliestAt - writtenAt);
  const allowedEarlyMinutes = minutes(dueAt - writtenAt) - earlyMinutes;
  const counted = ourMinutes + (rules.heldMinutesCount ? heldMinutes : 0);
  const isMadeUp =
    rules.makeUpFloorPerMille !== null && !leavesService(point) && !isEarlyAllowed(point, rules);
  const madeUp = isMadeUp ? allowedEarlyMinutes : 0;
  used.inSection = Math.max(0, used.inSection + counted - madeUp);
  used.inTotal = Math.max(0, used.inTotal + counted - madeUp);
  used.early += earlyMinutes;
  const over = overOf(rules, counted, used, earlyMinutes > 0);
  const isFixed = over.length > 0 && rules.overMaximum.means === 'fixedPenalty';
  const penaltySeconds =
    isFixed && rules.overMaximum.means === 'fixedPenalty'
      ? rules.overMaximum.seconds
      : penaltyOf(point, rules, ourMinutes, earlyMinutes);
  return {
    pointIndex: record.pointIndex,
    id: point.id,
    section: point.section,
    dueAt,
    writtenAt,
    ourMinutes,
    heldMinutes,
    earlyMinutes,
    allowedEarlyMinutes,
    penaltySeconds,
    sectionMinutes: used.inSection,
    totalMinutes: used.inTotal,
    over,
  };
}

function overOf(
  rules: PenaltyRules,
  atControl: number,
  used: Used,
  isEarly: boolean,
): ControlLateness['over'] {
  const isOver = (minutes: number, limit: number | null) => limit !== null && minutes > limit;
  const over: ControlLateness['over'] = [];
  if (isOver(atControl, rules.maxLateMinutesAtControl)) over.push('atControl');
  if (isOver(used.inSection, rules.maxLateMinutesInSection)) over.push('inSection');
  if (isOver(used.inTotal, rules.maxLateMinutesInTotal)) over.push('inTotal');
  if (isEarly && isOver(used.early, rules.maxEarlyMinutesInTotal)) over.push('early');
  return over;
}

function penaltyOf(
  point: ControlPoint,
  rules: PenaltyRules,
  ourMinutes: number,
  earlyMinutes: number,
): number {
  const mainOut = rules.mainControlOutSecondsPerMinute;
  if (mainOut !== null && isMainControl(point, rules) && isWayOut(point))
    return (ourMinutes + earlyMinutes) * mainOut;
  return ourMinutes * rules.lateSecondsPerMinute + earlyMinutes * rules.earlySecondsPerMinute;
}

/** Whole minutes of a length of time; nothing where it is below 0. */
function minutes(seconds: number): number {
  return Math.max(0, Math.floor(seconds / 60));
}

function dueAtControl(question: LatenessQuestion, point: ControlPoint, index: number): EpochSeconds {
  const { itinerary, rules, positions } = question;
  const planned = toWholeMinute(dueAtBySection(itinerary, index, positions));
  const before = recordBefore(question, index);
  // Order and interval are set anew: the new timetable counts, and what was lost before is no debt to it.
  if (!before || point.roles.includes('regroupOut') || before.point.leg !== point.leg)
    return Math.max(planned, before?.at ?? planned);
  if (leavesService(point) && rules.serviceOut === 'asPlanned') return Math.max(planned, before.at);
  const byTarget = rules.timing === 'target' ? targetDueAt(itinerary, index, actualsOf(question)) : null;
  if (byTarget !== null) return byTarget;
  const plannedBefore = toWholeMinute(dueAtBySection(itinerary, before.index, positions));
  return planned + Math.max(0, before.at - plannedBefore);
}

function earliestAtControl(
  question: LatenessQuestion,
  point: ControlPoint,
  index: number,
  dueAt: EpochSeconds,
): EpochSeconds {
  const { itinerary, rules, positions } = question;
  if (isEarlyAllowed(point, rules)) return Number.NEGATIVE_INFINITY;
  const planned = Math.min(dueAt, toWholeMinute(dueAtBySection(itinerary, index, positions)));
  const before = recordBefore(question, index);
  if (!before) return dueAt;
  if (leavesService(point)) return rules.serviceTimeMayBeGivenUp ? Math.max(planned, before.at) : dueAt;
  if (rules.makeUpFloorPerMille === null) return dueAt;
  const least = toWholeMinute(((point.allowedSeconds ?? 0) * rules.makeUpFloorPerMille) / 1000);
  return Math.min(dueAt, Math.max(planned, before.at + least));
}

function isEarlyAllowed(point: ControlPoint, rules: PenaltyRules): boolean {
  return point.roles.some((role) => rules.earlyAllowedAt.includes(role));
}

function leavesService(point: ControlPoint): boolean {
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
