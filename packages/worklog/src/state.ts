import type { ControlId, StageId } from '@halfshaft/itinerary';
import type { FactId, RecordedFact } from './car-fact';
import type {
  ActionId,
  ControlTime,
  EntryId,
  EntryKind,
  PersonId,
  Snag,
  SnagId,
  StageConfirmation,
  Task,
  TaskId,
} from './model';

/** One stage of one car. */
export interface StageRef {
  entryId: EntryId;
  stageId: StageId;
}
/** Made from a `StageRef` by `stageKeyOf`. */
export type StageKey = string;

/** One control on one car's way, or the start or finish of one stage. */
export interface TimeRef {
  entryId: EntryId;
  controlId: ControlId | StageId;
  /** Only at the finish of a stage. */
  finish?: true | undefined;
}
/** Made from a `TimeRef` by `timeKeyOf`. */
export type TimeKey = string;

/**
 * What must be remembered of an accepted action so that it can be undone. Plain JSON: a server keeps it beside the
 * action. `seq` of each part is the part's `changedSeq` right after the action: another value means changed since.
 */
export interface ActionRecord {
  actionId: ActionId;
  by: PersonId;
  enteredBy: PersonId;
  kinds: EntryKind[];
  /** Seq of its last entry. */
  seq: number;
  tasks: { before: Task; seq: number }[];
  /** `before` null: the action raised it. */
  snags: { snagId: SnagId; before: Snag | null; seq: number }[];
  stages: { entryId: EntryId; stageId: StageId; before: StageConfirmation | null; seq: number }[];
  /** Absent in records from before control times were recorded. */
  times?: (TimeRef & { before: ControlTime | null; seq: number })[];
  /** Absent in records from before facts were recorded. `before` null: the action recorded it. */
  facts?: { factId: FactId; before: RecordedFact | null; seq: number }[];
  undone: boolean;
}

/**
 * The work of one team at one event, or a slice of it (see `scopeOf`). Immutable. Maps, not objects: ids come from
 * devices, and an id such as `__proto__` must be only an id. Only what was touched is stored; see `taskOf`.
 */
export interface WorkState {
  tasks: ReadonlyMap<TaskId, Task>;
  snags: ReadonlyMap<SnagId, Snag>;
  stages: ReadonlyMap<StageKey, StageConfirmation>;
  times: ReadonlyMap<TimeKey, ControlTime>;
  facts: ReadonlyMap<FactId, RecordedFact>;
  actions: ReadonlyMap<ActionId, ActionRecord>;
}

/** Nothing has been done yet. */
export const emptyState: WorkState = {
  tasks: new Map(),
  snags: new Map(),
  stages: new Map(),
  times: new Map(),
  facts: new Map(),
  actions: new Map(),
};

/** What one action needs of the state; see `scopeOf`. */
export interface Scope {
  taskIds: TaskId[];
  snagIds: SnagId[];
  stages: StageRef[];
  times: TimeRef[];
  factIds: FactId[];
  actionIds: ActionId[];
}
