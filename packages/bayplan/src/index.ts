// biome-ignore-all assist/source/organizeImports: the public surface is grouped by subject, not by file name.

// The project
export type { Activity, Need, Precedence, Project, Resource, Schedule } from './model';
export { findProjectFault, type ProjectFault } from './find-project-fault';

// Times without scarcity
export { type ActivityTimes, type CriticalPath, criticalPath } from './times/critical-path';
export { type Estimate, estimateChain, estimateDuration, type ThreePoint } from './times/three-point';

// Schedules by rule, and a search for better ones
export { PRIORITY_RULES, type PriorityRule } from './generate/priorities';
export { type RuleOptions, scheduleByRule } from './generate/schedule-by-rule';
export { openSearch, type Search, type SearchOptions, type SearchResult } from './search/open-search';

// Judging a schedule
export { type LowerBounds, lowerBounds } from './bounds/lower-bounds';
export { checkSchedule, type ScheduleFault } from './check-schedule';

// A service: who does what on which car
export type {
  Access,
  Crew,
  Pin,
  Place,
  Service,
  ServiceCar,
  ServiceLink,
  ServicePerson,
  ServiceTask,
  Stretch,
  Tool,
  UnderWay,
  Way,
} from './service/service-model';
export { findServiceFault, type ServiceFault } from './service/find-service-fault';
export { plannedDuration } from './service/planned-duration';
export {
  type Assigned,
  type BayPlan,
  compareObjectives,
  LEVELS,
  type Level,
  type Objective,
  type PlannedWork,
} from './service/bay-plan';
export { type BayPlanFault, checkBayPlan } from './service/check-bay-plan';
export {
  openPlanning,
  type Planning,
  type PlanningOptions,
  type PlanningResult,
} from './service/search/open-planning';
export { lastSafeStarts } from './service/explain/last-safe-starts';
export type { Reason } from './service/explain/reason';
export { type Infeasible, whyInfeasible, type WhyOptions } from './service/explain/why-infeasible';
export { type WhyLeft, whyLeft } from './service/explain/why-left';

// What a service may bring, and what that costs
export {
  type CarOutlook,
  lateMinutes,
  type PlanOutlook,
  type SimulationOptions,
  simulatePlan,
} from './service/chance/simulate-plan';
export {
  type LatenessPrice,
  type LatenessRule,
  penaltyFor,
  priceLateness,
  pricePlan,
} from './service/chance/price-lateness';
export { type LeavingAnswer, type LeavingQuestion, weighLeaving } from './service/chance/weigh-leaving';

// Durations learned from jobs done
export { type LearnedDuration, learnDuration, type TimedJob } from './service/learn/learn-duration';

// A plan made again while the service runs
export type { DoneProgress, Progress, UnderWayProgress } from './service/replan/progress';
export { type Proposal, type ReplanOptions, replan } from './service/replan/replan';
export type { Change } from './service/replan/list-changes';

// One service of one car as a team knows it
export { proposeVisit } from './visit/propose-visit';
export type { PlannedCard, VisitQuestion, VisitWork } from './visit/visit-question';
export type { VisitLeft, VisitProposal, VisitRow } from './visit/visit-proposal';
