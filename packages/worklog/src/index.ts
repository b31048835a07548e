// biome-ignore-all assist/source/organizeImports: the public surface is grouped by subject, not by file name.

// Words: actions, tasks, snags, stages, flags
export * from './model';

// What is so about the car
export * from './car-fact';

// The log
export type { EntryBody, EntryDraft, LogEntry } from './entry';
export { numberEntries } from './number-entries';

// Ids
export { stageKeyOf } from './stage-key-of';
export { type CarOfCards, reopensOf } from './reopens-of';
export { taskIdOf } from './task-id-of';
export { taskRefOf } from './task-ref-of';
export { timeKeyOf } from './time-key-of';

// State
export { apply, applyAll, applyInPlace, draftOf, type WorkDraft } from './apply';
export { changesOf, type WorkChanges } from './changes-of';
export { rebuild } from './rebuild';
export { scopeOf } from './scope-of';
export { sliceOf } from './slice-of';
export {
  emptyState,
  type ActionRecord,
  type Scope,
  type StageKey,
  type StageRef,
  type TimeKey,
  type TimeRef,
  type WorkState,
} from './state';
export { taskOf } from './task-of';

// For the wear of cards
export { lastDoneOf, type DoneSoFar } from './last-done-of';
export { readingsOf } from './readings-of';
export { runsOf } from './runs-of';

// For what the crew says
export { type DebriefOffer, debriefLines, offersOfLine } from './debrief/offers-of-line';

// For triggers
export { repairsOf, type TemporaryRepair } from './repairs-of';
export { triggerFactsOf } from './trigger-facts-of';

// For what keeps failing
export { type CarLives, type CarLog, carLivesOf, distanceOf } from './lives/car-lives';
export { failedPartsOf } from './lives/failed-parts-of';
export { type DoneCard, LIFE_FACT_KINDS, type LoggedEvent, loggedEventOf } from './lives/logged-event';
export { type LifeQuestion, lifeQuestionOf, partIdOf, partOfId, type WatchedPart } from './lives/part-of';
export { LIFE_COUNTERS, type LifeCounter } from './lives/way-driven';

// Photos
export { type Photo, photoIn, photosOf, photosOfCar } from './photos-of';

// For tyres and settings
export { hotMillibarOf, type Warming } from './hot-pressure';
export { settingsOf, type CarSetting, type SettingChange } from './settings-of';
export { isOnCar, tyresOf, type TyreMeasure, type TyreQuestion, type TyreUse } from './tyres-of';

// For the checks before work
export { type Gate, gateOf } from './gate-of';

// For lateness
export { finishesOf, timesOf } from './times-of';

// Deciding
export { conflictTable, type ExpectedOutcome } from './conflict-table';
export { concernsOf, type Concern, type ConcernCode } from './concerns-of';
export { contentKey, sameContent, textInKeyOrder } from './content-key';
export { decide } from './decide';
export { mayRecordFor } from './may-record-for';
export { isFact } from './is-fact';
export type { Outcome, Refusal, RefusalCode } from './refusal';
export { upgradeAction, type Upgrade } from './upgrade-action';

// Carrying an event between two servers
export { actionOfEntries, type EnteredAction } from './carry/action-of-entries';
export { problemOfCarriedLog } from './carry/problem-of-carried-log';
export { whoseStands, type Sums, type WhoseStands } from './carry/whose-stands';

// Words for people
export { concernInWords } from './concern-in-words';
export { entryInWords, type EntryNames } from './entry-in-words';
export {
  askerInWords,
  factInWords,
  factPlaceInWords,
  fittedReasonInWords,
  gateChangeInWords,
  gateCheckInWords,
  outCauseInWords,
  tyrePlaceInWords,
} from './fact-in-words';
export { flagInWords } from './flag-in-words';
export { refusalInWords } from './refusal-in-words';

// Numbers that name nobody, for those who see several teams
export { type CarCounts, carCountsOf, type EventLog, isSameCounts, sumOfCounts } from './car-counts';
