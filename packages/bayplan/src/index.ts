// Lower bounds
export { type LowerBounds, lowerBounds } from './bounds/lower-bounds';
// Judging a schedule
export { checkSchedule, type ScheduleFault } from './check-schedule';
// The project
export { findProjectFault, type ProjectFault } from './find-project-fault';
// Schedules by rule
export { PRIORITY_RULES, type PriorityRule } from './generate/priorities';
export { type RuleOptions, scheduleByRule } from './generate/schedule-by-rule';
export type { Activity, Need, Precedence, Project, Resource, Schedule } from './model';
// Search
export { openSearch, type Search, type SearchOptions, type SearchResult } from './search/open-search';
// Times without scarcity
export { type ActivityTimes, type CriticalPath, criticalPath } from './times/critical-path';
export { type Estimate, estimateChain, estimateDuration, type ThreePoint } from './times/three-point';
