// Words: actions, tasks, snags, stages, flags

export { apply, applyAll } from './apply';
export { changesOf, type WorkChanges } from './changes-of';
export { conflictTable, type ExpectedOutcome } from './conflict-table';
export { contentKey, sameContent } from './content-key';
// Deciding
export { decide } from './decide';
// The log
export type { EntryBody, EntryDraft, LogEntry } from './entry';
export { type EntryNames, entryInWords } from './entry-in-words';
export { flagInWords } from './flag-in-words';
export { isFact } from './is-fact';
export * from './model';
export { numberEntries } from './number-entries';
export { rebuild } from './rebuild';
export type { Outcome, Refusal, RefusalCode } from './refusal';
// Words for people
export { refusalInWords } from './refusal-in-words';
export { scopeOf } from './scope-of';
export { sliceOf } from './slice-of';
export { stageKeyOf } from './stage-key-of';
// State
export {
  type ActionRecord,
  emptyState,
  type Scope,
  type StageKey,
  type StageRef,
  type WorkState,
} from './state';
// Ids
export { taskIdOf } from './task-id-of';
export { taskOf } from './task-of';
export { taskRefOf } from './task-ref-of';
export { type Upgrade, upgradeAction } from './upgrade-action';
