// Cards and what is said of them

// Words
export { amountInWords } from './amount-in-words';
// Verdicts
export { canBeDoneAt } from './can-be-done-at';
export { intervalInWords } from './interval-in-words';
export type { CarPlace, Drive, JobCard, Look, ReadingSpec, Surface } from './job-card';
export { judgeCard } from './judge-card';
export { judgeService } from './judge-service';
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
// Time at a service
export { neededPersonSeconds } from './needed-person-seconds';
export { nextChance } from './next-chance';
export type { CardQuestion, CardsQuestion, RouteKnowledge, ServiceQuestion, WearQuestion } from './questions';
export { type ReasonNames, reasonInWords } from './reason-in-words';
// To begin with
export { starterCards } from './starter-cards';
export { type ServiceTime, type UsableTime, usableMinutes } from './usable-minutes';
// Wear
export { wearBetween } from './wear-between';
export { wearMultiplier } from './wear-multiplier';
