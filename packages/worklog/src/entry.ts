import type { Conditions, ControlId, EpochSeconds, ServiceId, StageId } from '@halfshaft/itinerary';
import type { CarFact, FactId, FactPlace, RecordedFact } from './car-fact';
import type {
  ActionId,
  ClockMillis,
  ControlTime,
  DeviceId,
  EntryId,
  EntryKind,
  Finding,
  Flag,
  PersonId,
  Reading,
  Snag,
  SnagId,
  StageConfirmation,
  Task,
  TaskId,
  TaskRef,
} from './model';
import type { TimeRef } from './state';

/**
 * What one entry of the log says: all that `apply` needs, and nothing that must be looked up elsewhere.
 * `needsSignature` is what the card asked for when the entry was made: a card may be edited later, the log may not.
 */
export type EntryBody =
  | { kind: 'claimed'; task: TaskRef; needsSignature: boolean }
  | { kind: 'released'; task: TaskRef; heldBy: PersonId }
  | { kind: 'started'; task: TaskRef; needsSignature: boolean }
  | { kind: 'done'; task: TaskRef; needsSignature: boolean; findings: Finding[]; readings: Reading[] }
  | { kind: 'carriedOver'; task: TaskRef; needsSignature: boolean; reason: string }
  | { kind: 'dropped'; task: TaskRef; needsSignature: boolean; reason: string }
  /** `because`: the task whose re-opening or closing opened this one again (wheel off, then nuts); null: asked for. */
  | { kind: 'reopened'; task: TaskRef; reason: string; because: TaskId | null }
  /** Neither `onPaper` nor `byInitials`: given by the signer's own account. */
  | { kind: 'signed'; task: TaskRef; onPaper?: true | undefined; byInitials?: true | undefined }
  | {
      kind: 'snagRaised';
      snagId: SnagId;
      entryId: EntryId;
      serviceId: ServiceId | null;
      place: string;
      words: string;
      urgent: boolean;
      stop?: true | undefined;
    }
  | { kind: 'stageConfirmed'; entryId: EntryId; stageId: StageId; driven: boolean; conditions: Conditions }
  | {
      kind: 'timeRecorded';
      entryId: EntryId;
      controlId: ControlId | StageId;
      finish?: true | undefined;
      writtenAt: EpochSeconds;
      heldMinutes: number;
    }
  | { kind: 'factRecorded'; factId: FactId; entryId: EntryId; at: FactPlace; fact: CarFact }
  | {
      kind: 'undone';
      actionId: ActionId;
      /** Whose action it was, and what it had written: for the log screen. */
      doneBy: PersonId;
      kinds: EntryKind[];
      /** Each task and snag as it stood before; a snag raised by the action comes back withdrawn. */
      tasks: Task[];
      snags: Snag[];
      /** `before` null: nothing had been said about the stage. */
      stages: { entryId: EntryId; stageId: StageId; before: StageConfirmation | null }[];
      /** Absent in entries from before control times were recorded. `before` null: no time had been recorded. */
      times?: (TimeRef & { before: ControlTime | null })[] | undefined;
      /** Absent in entries from before facts were recorded. Each as it stood before; one recorded by the action comes back withdrawn. */
      facts?: RecordedFact[] | undefined;
    };

/** An entry as `decide` returns it: the server has not given it a place in the log yet. */
export interface EntryDraft {
  actionId: ActionId;
  /** Who did it. */
  by: PersonId;
  /** Who typed it: the same person, or a scribe. */
  enteredBy: PersonId;
  deviceId: DeviceId;
  deviceTime: ClockMillis;
  flags: Flag[];
  body: EntryBody;
}

/** An entry of the log. On a phone, before the server has answered, `seq` is provisional and `serverTime` null. */
export interface LogEntry extends EntryDraft {
  /** Gapless for each team and event. */
  seq: number;
  serverTime: ClockMillis | null;
}
