import type { EpochSeconds } from '@halfshaft/itinerary';
import type { Horizon } from './horizon';
import type { JudgedLimit } from './judged-limit';
import { placeAtTime } from './limit-place';
import type { DateLimit, LimitPlace, Verdict, VerdictReason } from './model';
import type { RoutedCard } from './questions';

/** What a card's calendar date says, by the times planned for the car itself. A date has no tolerance. */
export function judgeDateLimit(
  { dueAt: limit }: DateLimit,
  now: EpochSeconds,
  horizon: Horizon,
  question: RoutedCard,
): JudgedLimit {
  const passedAt = placeAtTime(question, limit);
  const [verdict, code] = verdictOf(limit, now, horizon.at, passedAt);
  return {
    verdict,
    overdue: now > limit,
    reason: {
      code,
      counter: 'date',
      limit,
      wearNow: now,
      wearAtNextChance: horizon.at,
      nextChance: horizon.serviceId,
      passedAt,
    },
  };
}

function verdictOf(
  limit: EpochSeconds,
  now: EpochSeconds,
  nextChanceAt: EpochSeconds,
  passedAt: LimitPlace | null,
): [Verdict, VerdictReason['code']] {
  if (limit <= now) return ['doNow', 'past'];
  if (limit < nextChanceAt) return ['doNow', 'dateFalls'];
  return ['leave', passedAt === null ? 'lasts' : 'reaches'];
}
