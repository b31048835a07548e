import type { EpochSeconds } from '../model';
import { toWholeMinute } from '../whole-minute';
import type { PenaltyRules } from './penalty-rules';

export interface CheckInWindow {
  /** The car may enter the zone from here. */
  mayEnterFrom: EpochSeconds;
  /** Handed over from here to `onTimeUntil`, that second included, the time written is the due minute. */
  onTimeFrom: EpochSeconds;
  onTimeUntil: EpochSeconds;
}

/**
 * When to enter a control's zone and when to hand over the time card, for the minute the car is due in.
 *
 * "Due 11:13: enter from 11:12:00, handed over from 11:13:00 to 11:13:59 is 11:13": Motorsport UK National Competition
 * Rules 2026, chapter 13.
 *
 * @example
 * checkInWindow(40_380, rules) // { mayEnterFrom: 40_320, onTimeFrom: 40_380, onTimeUntil: 40_439 }
 */
export function checkInWindow(
  dueAt: EpochSeconds,
  rules: Pick<PenaltyRules, 'earlyEntrySeconds'>,
): CheckInWindow {
  const onTimeFrom = toWholeMinute(dueAt);
  return { mayEnterFrom: onTimeFrom - rules.earlyEntrySeconds, onTimeFrom, onTimeUntil: onTimeFrom + 59 };
}
