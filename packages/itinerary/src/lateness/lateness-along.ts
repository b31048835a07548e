import type { ControlId, ControlPoint, EpochSeconds } from '../model';
import { requirePoint } from '../require-way';
import { toWholeMinute } from '../whole-minute';
import { earliestAtControl, isEarlyAllowed, leavesService } from './due-at-control';
import type { LatenessQuestion, TimeRecord } from './lateness-question';
import { isMainControl, isWayOut, resetAt } from './lateness-resets';
import type { PenaltyRules } from './penalty-rules';
import { type WalkedPoint, walkTimes } from './walk-times';

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
  refuseBadRecords(question);
  const along: ControlLateness[] = [];
  const used = { section: 0, inSection: 0, inTotal: 0, early: 0 };
  for (const walked of walkTimes(question)) {
    const { point, pointIndex, record } = walked;
    const reset = resetAt(itinerary, pointIndex, rules);
    if (reset?.when === 'beforeIt') used.inTotal = 0;
    if (point.section !== used.section) Object.assign(used, { section: point.section, inSection: 0 });
    if (record && point.kind === 'control') along.push(passControl(walked, point, record, used));
    if (reset?.when === 'afterIt') used.inTotal = 0;
  }
  return along;
}

function refuseBadRecords({ itinerary, records }: LatenessQuestion): void {
  const seen = new Set<number>();
  for (const { pointIndex } of records) {
    requirePoint('latenessAlong', itinerary, pointIndex);
    if (seen.has(pointIndex)) throw new RangeError(`latenessAlong: point ${pointIndex} is recorded twice`);
    seen.add(pointIndex);
  }
}

/** Counted so far. */
interface Used {
  section: number;
  inSection: number;
  inTotal: number;
  early: number;
}

function passControl(
  { from, dueAt }: WalkedPoint,
  point: ControlPoint,
  record: TimeRecord,
  used: Used,
): ControlLateness {
  const { rules } = from;
  const writtenAt = toWholeMinute(record.writtenAt);
  const lateMinutes = minutes(writtenAt - dueAt);
  const heldMinutes = Math.min(lateMinutes, record.heldMinutes ?? 0);
  const ourMinutes = lateMinutes - heldMinutes;
  const earliestAt = earliestAtControl(from, point, record.pointIndex, dueAt);
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
