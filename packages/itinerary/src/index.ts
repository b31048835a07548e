// What an itinerary is

// Import, checks, and back to text
export type { ItineraryTableOptions } from './assemble-draft';
export { checkItinerary } from './check-itinerary';
// Times
export { DEFAULT_START_INTERVAL_SECONDS, dueAt } from './due-at';
// For screens
export { formatClock, formatDay, formatKilometres } from './format';
export { itineraryToTable } from './itinerary-to-table';
export { MAX_TABLE_ROWS, MAX_TEXT_CHARACTERS } from './limits';
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
export { parseItineraryTable } from './parse-itinerary-table';
export type { ParsedItinerary } from './parsed-itinerary';
export type { ItineraryProblemCode } from './problem-code';
// The way and what is gathered along it
export type { RouteCounters } from './route-counters';
export { routeCounters, routeMetresAt } from './route-counters';
export type { RouteSegment } from './route-segments';
export { segmentsBetween } from './route-segments';
// Services
export { sameItinerary } from './same-itinerary';
export { servicesOf } from './services-of';
export { stageStartAt, toWholeMinute } from './whole-minute';
