export { dueAt } from './due-at';
export { formatClock, formatDay, formatKilometres } from './format';
export type {
  ConditionName,
  Conditions,
  ControlId,
  ControlPoint,
  ControlRole,
  EpochSeconds,
  Itinerary,
  ItineraryProblem,
  Point,
  ServiceId,
  ServiceWindow,
  StageId,
  StagePoint,
  StageRun,
  StartBlock,
} from './model';

export type { RouteCounters } from './route-counters';
export { routeCounters, routeMetresAt } from './route-counters';
export type { RouteSegment } from './route-segments';
export { segmentsBetween } from './route-segments';
export { servicesOf } from './services-of';
export { stageStartAt, toWholeMinute } from './whole-minute';
