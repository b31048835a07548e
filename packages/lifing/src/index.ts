// Cards and what is said of them.

export type { CarPlace, Drive, JobCard, Look, ReadingSpec, Surface } from './job-card';
export type {
  CardVerdict,
  ConditionFactors,
  Counter,
  Counters,
  DateLimit,
  Interval,
  LastDone,
  LifingCard,
  LimitPlace,
  Verdict,
  VerdictReason,
} from './model';
export type { CardQuestion, CardsQuestion, RouteKnowledge, ServiceQuestion, WearQuestion } from './questions';

// Wear.

export { carriedWear } from './carried-wear';
export { wearBetween } from './wear-between';
export { wearMultiplier } from './wear-multiplier';

// Verdicts.

export { canBeDoneAt } from './can-be-done-at';
export { judgeCard } from './judge-card';
export { judgeService } from './judge-service';
export { nextChance } from './next-chance';

// Time at a service.

export { neededPersonSeconds } from './needed-person-seconds';
export { type ServiceTime, type UsableTime, usableMinutes } from './usable-minutes';

// Words.

export { amountInWords } from './amount-in-words';
export { intervalInWords } from './interval-in-words';
export { type ReasonNames, reasonInWords } from './reason-in-words';

// To begin with.

export { starterCards } from './starter-cards';
