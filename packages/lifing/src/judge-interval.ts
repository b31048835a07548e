import type { Horizon } from './horizon';
import type { JudgedLimit } from './judged-limit';
import { limitPlace } from './limit-place';
import type { Counters, Interval, Verdict, VerdictReason } from './model';
import type { RoutedCard } from './questions';
import { requireWholeNumber } from './whole-number';

/** Wear of the card on arrival here, and on arrival where it must last to if it is left alone here. */
export interface WearAhead {
  now: Counters;
  atHorizon: Counters;
}

/**
 * What one interval of a card says. Coming up to the limit exactly on arrival at the next chance is in time: the work
 * is then done there. So "every service" (1 service, no tolerance) is due on each arrival, as wear here is 1, and once
 * done here it lasts to the next one, where it comes up to 1 again.
 */
export function judgeInterval(
  interval: Interval,
  wear: WearAhead,
  horizon: Horizon,
  question: RoutedCard,
): JudgedLimit {
  const { counter, every, tolerance } = interval;
  requireWholeNumber('judgeCard', `the interval on ${counter}`, every, 1);
  requireWholeNumber('judgeCard', `the tolerance on ${counter}`, tolerance);
  const wearNow = wear.now[counter];
  const wearAtNextChance = wear.atHorizon[counter];
  const passedAt = limitPlace(question, counter, every);
  const [verdict, code] = verdictOf(interval, wearNow, wearAtNextChance, passedAt !== null);
  return {
    verdict,
    overdue: wearNow > every + tolerance,
    reason: {
      code,
      counter,
      limit: every,
      wearNow,
      wearAtNextChance,
      nextChance: horizon.serviceId,
      passedAt,
    },
  };
}

function verdictOf(
  { every, tolerance }: Interval,
  wearNow: number,
  wearAtNextChance: number,
  reachedInEvent: boolean,
): [Verdict, VerdictReason['code']] {
  if (wearNow >= every) return ['doNow', 'past'];
  if (wearAtNextChance > every + tolerance) return ['doNow', 'wontReach'];
  if (wearAtNextChance > every) return ['ifTime', 'withinTolerance'];
  return ['leave', reachedInEvent ? 'reaches' : 'lasts'];
}
