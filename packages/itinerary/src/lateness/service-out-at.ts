import type { EpochSeconds, ServiceWindow } from '../model';
import { toWholeMinute } from '../whole-minute';
import type { PenaltyRules } from './penalty-rules';

/**
 * When a car leaves service: the minute written at the in-control plus the minutes allowed, so late in means late out
 * and no working time is lost. Where the event keeps the printed out-time instead (`asPlanned`), that one, and not
 * before the car is in.
 *
 * Common practice, no source. Throws when a time is no time.
 *
 * @example
 * serviceOutAt({ service: { allowedSeconds: 1800 }, inWrittenAt: 47_160, plannedOutAt: 48_600, rules }) // 48_960
 */
export function serviceOutAt(question: {
  service: Pick<ServiceWindow, 'allowedSeconds'>;
  /** What the in-control wrote. */
  inWrittenAt: EpochSeconds;
  /** The car's out-time by the timetable. */
  plannedOutAt: EpochSeconds;
  rules: Pick<PenaltyRules, 'serviceOut'>;
}): EpochSeconds {
  const { service, inWrittenAt, plannedOutAt, rules } = question;
  const inAt = toWholeMinute(inWrittenAt);
  if (rules.serviceOut === 'fullTime') return inAt + service.allowedSeconds;
  return Math.max(inAt, plannedOutAt);
}
