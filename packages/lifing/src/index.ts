// Cards and what is said of them.

export { type CardAsSent, completeCard } from './card-as-sent';
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

// Cards as a table for a spreadsheet.

export { CARD_LIMITS } from './card-limits';
export { cardsToTable } from './card-table/cards-to-table';
export { csvText } from './card-table/csv-text';
export { type MatchedCards, matchCards } from './card-table/match-cards';
export {
  type CardTableCode,
  type CardTableProblem,
  MOST_TABLE_CARDS,
  MOST_TABLE_CHARACTERS,
  type ReadCardTable,
  type TableCard,
} from './card-table/model';
export { readCardTable } from './card-table/read-card-table';

// Wear.

export { carriedWear } from './carried-wear';
export { wearBetween } from './wear-between';
export { wearMultiplier } from './wear-multiplier';

// Verdicts.

export { canBeDoneAt } from './can-be-done-at';
export { type JobChange, type JobsOfVersion, jobChangeInWords, jobsChanged } from './jobs-changed';
export { judgeCard } from './judge-card';
export { judgeService } from './judge-service';
export { nextChance } from './next-chance';

// What makes cards due beside their intervals.

export { type CombinedReason, type CombinedVerdict, combineVerdicts } from './combine-verdicts';
export { type CrewJob, type CrewQuestion, crewListOutside } from './crew-list-outside';
export { cardIdsThatFit } from './triggers/card-ids-that-fit';
export { incidentInWords } from './triggers/incident-in-words';
export { judgeTriggers } from './triggers/judge-triggers';
export {
  type Fact,
  INCIDENT_CODES,
  type IncidentCode,
  type Trigger,
  type TriggerKind,
  type TriggerReason,
  type TriggerVerdict,
} from './triggers/model';
export type { TriggersQuestion } from './triggers/questions';
export { crewCardIds, jobDoneTriggersForCards, triggersForCards } from './triggers/triggers-for-cards';

// Readings.

export { CORNERS, isAtPosition, positionsOfCard, wheelOf } from './positions-of-card';
export { type Gauge, gaugesOf } from './readings/gauges-of';
export { type Consumption, judgeConsumption } from './readings/judge-consumption';
export {
  type JudgedGauge,
  judgeGauges,
  type ReadGauge,
  type ReadingsQuestion,
  readGauges,
} from './readings/judge-gauges';
export { type JudgedReading, judgeReading } from './readings/judge-reading';
export { judgeReadings } from './readings/judge-readings';
export type {
  PartEvent,
  PositionValue,
  ReadingReason,
  ReadingVerdict,
  WearReading,
  WearSpec,
} from './readings/model';
export type { Series, SeriesReading } from './readings/series-of';
export { axleOfPosition, wearGroup } from './readings/wear-group';
export { type WearRate, type WearRateQuestion, wearRate } from './readings/wear-rate';

// Time at a service.

export { doneOnTheWay, type NeededAtService, neededAtService } from './needed-at-service';
export { neededPersonSeconds } from './needed-person-seconds';
export { preparedAtHome } from './prepared-at-home';
export {
  CLOSE_UP_SECONDS,
  PACE_PER_MILLE,
  SET_UP_SECONDS,
  type ServiceTime,
  type UsableTime,
  usableMinutes,
} from './usable-minutes';

// Words.

export { amountInWords } from './amount-in-words';
export { combinedReasonInWords } from './combined-reason-in-words';
export { intervalInWords } from './interval-in-words';
export { type ReasonNames, reasonInWords } from './reason-in-words';

// To begin with.

export { fullStarterCards } from './full-starter/full-starter-cards';
export { outsideServiceIds } from './full-starter/outside-service-ids';
export { starterEssentialIds } from './full-starter/starter-essential-ids';
export { starterTriggers } from './full-starter/starter-triggers';
export { starterCards } from './starter-cards';

// After the event.

export { type WorkshopAccess, type WorkshopGroup, workshopList } from './workshop-list';
