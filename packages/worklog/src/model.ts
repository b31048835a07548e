import type { Conditions, ControlId, EpochSeconds, ServiceId, StageId, StageRun } from '@halfshaft/itinerary';
import type { CarFact, FactId, FactPlace } from './car-fact';

/**
 * The work log's words. Everything that changes in the bay is an action; `decide` turns an action into log entries or
 * a named refusal, the same way on a phone and on the server. The log holds ids of people, never names.
 */

export type PersonId = string;
/** One car at one event. */
export type EntryId = string;
export type CardId = string;
export type SnagId = string;
export type ActionId = string;
export type DeviceId = string;
/** Milliseconds since the epoch, as a device or the server read its clock. */
export type ClockMillis = number;

/** A piece of work: a card, or a snag's repair, at one service of one car. */
export interface TaskRef {
  entryId: EntryId;
  serviceId: ServiceId;
  source: { kind: 'card'; cardId: CardId } | { kind: 'snag'; snagId: SnagId };
}
/** Made from a `TaskRef` by `taskIdOf`: the same on every device. */
export type TaskId = string;

export type TaskState = 'open' | 'claimed' | 'underWay' | 'done' | 'carriedOver' | 'notNeeded';

/** "OK" · "keep an eye" · "needs work" · "temporary repair" on screens. */
export type FindingGrade = 'ok' | 'watch' | 'needsWork' | 'temporaryRepair';

export interface Finding {
  /** The look (of a round) or the job it concerns; null for the card as a whole. */
  lookId: string | null;
  /** Place on the car such as FL, or null. */
  position: string | null;
  grade: FindingGrade;
  words: string;
  /** A new part went on in its place straight away: a life begins. Left away where that is not said. */
  newPart?: true;
}

export interface Reading {
  readingId: string;
  position: string | null;
  /** In the reading's own smallest unit as the card states it (tenths of a millimetre, millibar …): whole. */
  value: number;
}

/** The version of the action shapes this code writes. The server takes it and the one before. */
export const ACTION_VERSION = 1;

export type ActionBody =
  | { kind: 'takeTask'; args: { task: TaskRef } }
  | { kind: 'releaseTask'; args: { task: TaskRef } }
  | { kind: 'startTask'; args: { task: TaskRef } }
  | { kind: 'closeTask'; args: { task: TaskRef; findings: Finding[]; readings: Reading[] } }
  | { kind: 'carryOverTask'; args: { task: TaskRef; reason: string } }
  | { kind: 'dropTask'; args: { task: TaskRef; reason: string } }
  | { kind: 'reopenTask'; args: { task: TaskRef; reason: string } }
  | {
      kind: 'signTask';
      args: {
        task: TaskRef;
        /** Given in ink on the printed sheet and typed in later, maybe by another. Absent: given on the device. */
        onPaper?: boolean | undefined;
        /** Given on another's device by typing the signer's own initials. */
        byInitials?: boolean | undefined;
      };
    }
  | {
      kind: 'raiseSnag';
      args: {
        snagId: SnagId;
        entryId: EntryId;
        serviceId: ServiceId | null;
        place: string;
        words: string;
        urgent: boolean;
        /** The crew would not drive on before it is looked at: worse than urgent, which such a snag is too. */
        stop?: true | undefined;
      };
    }
  | {
      kind: 'confirmStage';
      args: { entryId: EntryId; stageId: StageId; driven: boolean; conditions: Conditions };
    }
  | {
      kind: 'recordTime';
      args: {
        entryId: EntryId;
        /** The printed name of the control, or of the stage whose start (or finish) it is. */
        controlId: ControlId | StageId;
        /** At a stage its flying finish, not its start. Absent everywhere else. */
        finish?: true | undefined;
        /** The minute written there, of the event's official clock: a whole minute. */
        writtenAt: EpochSeconds;
        /** Of the minutes lost on the way here, those the event cost. Whole, 0 to 600. */
        heldMinutes: number;
      };
    }
  | { kind: 'recordFact'; args: { factId: FactId; entryId: EntryId; at: FactPlace; fact: CarFact } }
  | { kind: 'undo'; args: { actionId: ActionId } };

export type ActionKind = ActionBody['kind'];

export const ACTION_KINDS = [
  'takeTask',
  'releaseTask',
  'startTask',
  'closeTask',
  'carryOverTask',
  'dropTask',
  'reopenTask',
  'signTask',
  'raiseSnag',
  'confirmStage',
  'recordTime',
  'recordFact',
  'undo',
] as const satisfies readonly ActionKind[];

/** The arguments of one kind of action. */
export type ArgsOf<K extends ActionKind> = Extract<ActionBody, { kind: K }>['args'];

/** What stands on every action beside its kind and arguments. */
export interface ActionStamp {
  actionId: ActionId;
  deviceId: DeviceId;
  /** 1, 2, 3 … for each device: its own order. */
  deviceSeq: number;
  deviceTime: ClockMillis;
  version: number;
  by: PersonId;
}

/** What a device pushes. `by` is who did it; who typed it is known from the session. */
export type Action = ActionBody & ActionStamp;

/** An action of any version, its kind and arguments not looked at yet. */
export type PushedAction = ActionStamp & { kind: string; args: unknown };

/** What the caller knows of the person an action is done by, and the one who typed it. */
export interface Doer {
  personId: PersonId;
  enteredBy: PersonId;
  /** Managers and admins may release, re-open and drop what others hold. */
  mayManage: boolean;
  /**
   * When the membership was revoked, or null. What was made before still counts and is flagged; of what was made
   * after, only facts are kept, flagged.
   */
  revokedAt: ClockMillis | null;
}

/** What the log must know of the card or snag behind a task to decide. */
export interface TaskRules {
  /** A second, different person must sign after it is closed. */
  needsSignature: boolean;
  /** Reading ids (with position) that closing must carry. */
  requiredReadings: { readingId: string; position: string | null }[];
  /** Tasks to open again when this one is re-opened or newly done (wheel off, then nuts): resolved ids, may be empty. */
  reopens: TaskId[];
  /**
   * False once the itinerary dropped the service: facts are kept and flagged, claims refused; only letting go and
   * signing still pass, since they begin no work and refusing them would leave someone holding it for ever.
   */
  serviceStands: boolean;
}

export interface Task {
  id: TaskId;
  ref: TaskRef;
  state: TaskState;
  holder: PersonId | null;
  doneBy: PersonId | null;
  /** Others who say they did it too, in the order they said so. None of them may sign. */
  alsoDoneBy: PersonId[];
  signedBy: PersonId | null;
  needsSignature: boolean;
  reason: string | null;
  findings: Finding[];
  readings: Reading[];
  /** 1 at first; goes up by one each time it is opened again. */
  round: number;
  /** The seq of the entry that last changed it; 0 while it is only implied. */
  changedSeq: number;
  changedBy: PersonId | null;
}

export interface Snag {
  id: SnagId;
  entryId: EntryId;
  serviceId: ServiceId | null;
  place: string;
  words: string;
  urgent: boolean;
  stop?: true | undefined;
  raisedBy: PersonId;
  withdrawn: boolean;
  /** The seq of the entry that last changed the snag or a task of its repair. */
  changedSeq: number;
  changedBy: PersonId;
}

/** What was last said about one stage of one car. */
export interface StageConfirmation extends StageRun {
  entryId: EntryId;
  confirmedBy: PersonId;
  changedSeq: number;
  changedBy: PersonId;
}

/** What was last said of the time one control wrote for one car, or of when it started or finished a stage. */
export interface ControlTime {
  entryId: EntryId;
  controlId: ControlId | StageId;
  finish?: true | undefined;
  writtenAt: EpochSeconds;
  heldMinutes: number;
  recordedBy: PersonId;
  changedSeq: number;
  changedBy: PersonId;
}

/** Facts that are kept although something stood against them; each is told to both sides in words. */
export type Flag =
  | { code: 'alsoDoneBy'; personId: PersonId }
  | { code: 'heldByAnother'; personId: PersonId }
  | { code: 'afterCarryOver' }
  | { code: 'afterNotNeeded' }
  | { code: 'serviceCancelled' }
  | { code: 'afterRevocation' }
  | { code: 'readingMissing'; readingId: string; position: string | null }
  /** Closed although its card or snag is not known (any more). */
  | { code: 'unknownTask' }
  /** A snag with this id was raised before: its first raiser stays, the new words are added. */
  | { code: 'alsoRaisedBy'; personId: PersonId }
  /** A fact with this id was recorded before: the first one stands, this one is kept in the log only. */
  | { code: 'alsoRecordedBy'; personId: PersonId }
  /** Came from the log of another server; the person brought it in. Says nothing against it. */
  | { code: 'broughtIn'; personId: PersonId };

export type FlagCode = Flag['code'];

export type EntryKind =
  | 'claimed'
  | 'released'
  | 'started'
  | 'done'
  | 'carriedOver'
  | 'dropped'
  | 'reopened'
  | 'signed'
  | 'snagRaised'
  | 'stageConfirmed'
  | 'timeRecorded'
  | 'factRecorded'
  | 'undone';
