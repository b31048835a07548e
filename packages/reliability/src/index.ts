// Words shared by all

// Decisions
export { ADVISED_SHARE, adviseLimit, type LimitAdvice } from './decisions/advise-limit';
export {
  ageReplacement,
  type ReplacementAdvice,
  type ReplacementQuestion,
} from './decisions/age-replacement';
export {
  type MinimalRepairAdvice,
  type MinimalRepairQuestion,
  minimalRepairReplacement,
} from './decisions/minimal-repair-replacement';
export { type Pareto, type ParetoRow, pareto } from './decisions/pareto';
export { type PoissonStock, poissonStock } from './decisions/poisson-stock';
// What may be told of what several teams share
export {
  type PoolTold,
  planTelling,
  type SharedCopy,
  type ShareLevel,
  type TellingPlan,
  type ToldRelease,
} from './disclosure/plan-telling';
export { countTeams, type Release, type SharedPart } from './disclosure/shared-part';
// From the log to lives: rules in exposure/rules.md
export {
  type CarRecurrence,
  failuresOf,
  recurrencesOf,
  type TimesSeen,
  timesSeen,
} from './exposure/car-failures';
export type {
  CarHistory,
  CarriedAge,
  FeltWhere,
  FindingGrade,
  PartQuestion,
  PartRecord,
  WatchedEvent,
} from './exposure/car-history';
export type { Ending, Exposure, Origin, PartFailure, Spot } from './exposure/exposure';
export { exposuresOf } from './exposure/exposures-of';
export { historiesByCard } from './exposure/histories-by-card';
export { type LifeData, observationsOf } from './exposure/observations-of';
export { type CountedShare, countedShare } from './field/counted-share';
// A field of starters, from what an organiser writes down
export { type FieldFigures, fieldFigures } from './field/field-figures';
export type { FieldStretch } from './field/field-stretch';
export { type EventCount, type GrowthOverEvents, growthOverEvents } from './field/growth-over-events';
export { type ControlFigures, type LatenessByControl, latenessByControl } from './field/lateness-by-control';
export { type LatenessByService, type LatenessFigures, latenessByService } from './field/lateness-figures';
export type { MinutesOver } from './field/minutes-over';
export { type SharedCount, type ShareTrend, shareTrend } from './field/share-trend';
export { type StopRate, type StopRates, stopRates } from './field/stop-rates';
export { type StopsAlong, type StopsAtMark, type StopsCurve, stopsAlong } from './field/stops-along';
export { fitExponential } from './fit/fit-exponential';
export { fitLognormal } from './fit/fit-lognormal';
export { fitWeibull } from './fit/fit-weibull';
export type {
  Estimate,
  ExponentialFit,
  FitOptions,
  FitRefusal,
  FittedLife,
  LifeFit,
  LognormalFit,
  WeibullFit,
} from './fit/fitted-life';
export { type FittedQuantile, fittedQuantile } from './fit/fitted-quantile';
export { type FittedSurvival, fittedSurvival } from './fit/fitted-survival';
export { type RatioQuantile, ratioQuantile } from './fit/ratio-quantile';
export { type RatioSurvival, ratioSurvival } from './fit/ratio-survival';
// Lives: fitted distributions
export type { LifeObservation } from './fit/read-observations';
export { fitPowerLaw, type PowerLaw, type PowerLawFit } from './growth/fit-power-law';
export {
  type FailureGroup,
  fitPowerLawGrouped,
  type GroupedPowerLawFit,
} from './growth/fit-power-law-grouped';
export type { Trend, TrendDirection, TrendRefusal } from './growth/judge-trend';
export { laplaceTrend } from './growth/laplace-trend';
export { militaryHandbookTrend } from './growth/military-handbook-trend';
// Growth and trend
export type { EventHistory } from './growth/read-history';
export { reverseArrangements } from './growth/reverse-arrangements';
export type { Bounds, LevelOption, Life, OpenBounds, Refusal } from './model';
// Failures that come again
export {
  type DistanceBetweenFailures,
  distanceBetweenFailures,
  type FailureCount,
} from './recurrence/distance-between-failures';
export {
  type MeanCumulative,
  type MeanCumulativeStep,
  meanCumulative,
  type UnitHistory,
} from './recurrence/mean-cumulative';
export {
  type CausedLife,
  type CauseIncidence,
  type CumulativeIncidence,
  cumulativeIncidence,
  type IncidenceStep,
} from './survival/cumulative-incidence';
// Lives: the share still good after a distance, without any formula of wear
export {
  kaplanMeier,
  type SurvivalCurve,
  type SurvivalOptions,
  type SurvivalStep,
} from './survival/kaplan-meier';
export { stepAt } from './survival/step-at';
