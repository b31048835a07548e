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
