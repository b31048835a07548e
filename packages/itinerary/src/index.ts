// What an itinerary is

// Import, checks, and back to text
export type { ItineraryTableOptions } from './assemble-draft';
// Amendments
export { changeInWords } from './changes/change-in-words';
export type { CompareOptions } from './changes/compare-itineraries';
export { compareItineraries } from './changes/compare-itineraries';
export type { IntervalBlock, ItineraryChange } from './changes/itinerary-change';
export { checkItinerary } from './check-itinerary';
// Times
export { DEFAULT_START_INTERVAL_SECONDS, dueAt } from './due-at';
// For screens
export { formatClock, formatDay, formatKilometres } from './format';
export { itineraryToTable } from './itinerary-to-table';
// Lateness and penalties
export type { CheckInWindow } from './lateness/check-in-window';
export { checkInWindow } from './lateness/check-in-window';
export type { ControlLateness } from './lateness/lateness-along';
export { latenessAlong } from './lateness/lateness-along';
export type { LatenessQuestion, TimeRecord } from './lateness/lateness-question';
export { metresAlong } from './lateness/metres-along';
export type { MinutesToLose } from './lateness/minutes-to-lose';
export { minutesToLose } from './lateness/minutes-to-lose';
export type { PenaltyPreset } from './lateness/penalty-presets';
export { PENALTY_PRESETS } from './lateness/penalty-presets';
export type { LatenessReset, PenaltyRules } from './lateness/penalty-rules';
export { DEFAULT_PENALTY_RULES } from './lateness/penalty-rules';
export { hasLeftService, hasReached, serviceNow } from './lateness/service-now';
export { serviceOutAt } from './lateness/service-out-at';
export type { PointTime } from './lateness/times-along';
export { timesAlong } from './lateness/times-along';
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
export { type PositionsBySection, positionIn, type StartPosition } from './position-in';
export { type EntryPositions, positionsOf } from './positions-of';
export type { ItineraryProblemCode } from './problem-code';
// The quick form
export { itineraryFromDays } from './quick-form/itinerary-from-days';
export type { QuickDay, QuickForm, QuickLoop } from './quick-form/quick-form';
export { QUICK_ROAD_METRES_PER_HOUR, QUICK_STAGE_METRES_PER_HOUR } from './quick-form/quick-form';
export { quickFormInWords } from './quick-form/quick-form-in-words';
// Import of any shape, and mending it cell by cell
export type { CellEdit } from './reading/edit-itinerary-cell';
export { editItineraryCell } from './reading/edit-itinerary-cell';
export type { RowEdit } from './reading/edit-itinerary-rows';
export { dropItineraryRow, putItineraryRow } from './reading/edit-itinerary-rows';
export { readItinerary } from './reading/read-itinerary';
export type {
  ColumnMeaning,
  ItineraryRead,
  LeftOutLine,
  ReadCell,
  ReadHeading,
  ReadItineraryOptions,
  ReadRow,
  ReadTable,
} from './reading/read-itinerary-model';
export { readTableToText } from './reading/read-table-to-text';
// Who started, who stopped, where and why
export { carClasses, recordsOfClass } from './retirement-list/car-classes';
export { type CarCounts, countCars } from './retirement-list/count-cars';
export { type DrivenStretch, drivenStretches } from './retirement-list/driven-stretches';
export { CAUSE_WORDS, OUTCOME_WORDS, SOURCE_WORDS } from './retirement-list/list-words';
export type { CarRecord } from './retirement-list/model';
export { readRetirementList } from './retirement-list/read-retirement-list';
export { retirementListCells } from './retirement-list/retirement-list-cells';
export { stageMetresOf } from './retirement-list/stage-metres';
// The way and what is gathered along it
export type { RouteCounters } from './route-counters';
export { routeCounters, routeMetresAt } from './route-counters';
export type { RouteSegment } from './route-segments';
export { segmentsBetween } from './route-segments';
// Services
export { sameItinerary } from './same-itinerary';
export { servicesOf } from './services-of';
export type { SavedStartList } from './start-list/places-of-car';
export { newestStartLists, placesOfCar } from './start-list/places-of-car';
export { readStartList } from './start-list/read-start-list';
export type { ReadStartList, Starter } from './start-list/start-list';
export type { ColumnKey } from './table-columns';
export { COLUMN_HEADINGS } from './table-columns';
export type { ActualTime, ActualTimes } from './target-due-at';
export { targetDueAt } from './target-due-at';
// Times at controls, as an organiser has them
export { type ControlArrival, controlArrivals } from './time-list/control-arrivals';
export type { ControlPass } from './time-list/model';
export { readTimeList } from './time-list/read-time-list';
export { type ServiceLeave, serviceLeaves } from './time-list/service-leaves';
export { timeListCells } from './time-list/time-list-cells';
export { stageStartAt, toWholeMinute } from './whole-minute';
