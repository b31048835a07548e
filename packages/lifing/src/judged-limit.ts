import type { Verdict, VerdictReason } from './model';

/** What one limit of a card says on its own. */
export interface JudgedLimit {
  verdict: Verdict;
  /** Passed already by more than its tolerance. */
  overdue: boolean;
  reason: VerdictReason;
}

const VERDICT_ORDER: readonly Verdict[] = ['doNow', 'ifTime', 'leave'];
const CODE_ORDER: readonly VerdictReason['code'][] = [
  'past',
  'wontReach',
  'dateFalls',
  'withinTolerance',
  'reaches',
  'lasts',
  'notHere',
];

/**
 * Sorts the most pressing first: the verdict, then what is overdue, then what is past already, then by when the
 * limit is or was passed. Equal ones compare as 0, so that a stable sort keeps the order they came in.
 */
export function compareUrgency(first: JudgedLimit, second: JudgedLimit): number {
  return (
    VERDICT_ORDER.indexOf(first.verdict) - VERDICT_ORDER.indexOf(second.verdict) ||
    Number(second.overdue) - Number(first.overdue) ||
    CODE_ORDER.indexOf(first.reason.code) - CODE_ORDER.indexOf(second.reason.code) ||
    comparePassing(first.reason, second.reason)
  );
}

/** By when the limit is or was passed, the earlier one first. */
export function comparePassing(first: VerdictReason, second: VerdictReason): number {
  const a = passingTime(first);
  const b = passingTime(second);
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

function passingTime(reason: VerdictReason): number {
  if (reason.counter === 'date' && reason.limit !== null) return reason.limit;
  if (reason.passedAt !== null) return reason.passedAt.at;
  return reason.code === 'past' ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
}
