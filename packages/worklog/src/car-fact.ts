import type { ServiceId, StageId } from '@halfshaft/itinerary';
import type { IncidentCode } from '@halfshaft/lifing';
import type { CardId, EntryId, PersonId, TaskId } from './model';

/** Made by the device that records it, like a snag's id. */
export type FactId = string;
/** One physical tyre of an entry: the same id on every record of it. */
export type TyreId = string;

/** Where on the event a fact belongs: at a service, or on the road after this stage (null: before the first one). */
export type FactPlace =
  | { kind: 'service'; serviceId: ServiceId }
  | { kind: 'road'; afterStageId: StageId | null };

/** Where a tyre is. On the car, carried as a spare, in the service area, or given up. */
export const TYRE_PLACES = ['FL', 'FR', 'RL', 'RR', 'spare1', 'spare2', 'service', 'scrapped'] as const;
export type TyrePlace = (typeof TYRE_PLACES)[number];

export const SETTING_ASKERS = ['driver', 'coDriver', 'serviceCrew'] as const;
export type SettingAsker = (typeof SETTING_ASKERS)[number];

/** What one person looks at before anybody works on the car, in the order of the paper (common practice, no source). */
export const GATE_CHECKS = [
  'onStands',
  'wheelsChocked',
  'engineOff',
  'extinguisherOut',
  'systemPinned',
] as const;
export type GateCheck = (typeof GATE_CHECKS)[number];

/** After these it has to be looked at again. */
export const GATE_CHANGES = ['refuelled', 'engineStarted', 'carDown'] as const;
export type GateChange = (typeof GATE_CHANGES)[number];

/** Why a new part went on. Worn out and broken are failures of the old one; the others say it was still good. */
export const FITTED_REASONS = ['wornOut', 'broke', 'planned', 'damagedByAnother'] as const;
export type FittedReason = (typeof FITTED_REASONS)[number];

/** Why a car is out. Causes that compete: a car that went off the road can no longer lose its gearbox there. */
export const OUT_CAUSES = ['mechanical', 'offRoad', 'overTime', 'other'] as const;
export type OutCause = (typeof OUT_CAUSES)[number];

/**
 * Something that is so about the car, and asks nothing of anyone: nobody can lose a race for it, so it is always kept.
 * A mistake is taken back by undo and recorded again.
 */
export type CarFact =
  /** What the crew met on the road, or somebody saw on arrival. `place` such as FL, or null. */
  | {
      kind: 'incident';
      code: IncidentCode;
      place: string | null;
      words: string;
      /** Of this job a part broke in it. Absent: none, or nobody said which. */
      brokenCardId?: CardId | undefined;
    }
  /** A part was fitted anew although its card was not done, such as one changed by the crew on the road. */
  | {
      kind: 'fitted';
      cardId: CardId;
      position: string | null;
      words: string;
      /** Absent: nobody said why. */
      because?: FittedReason | undefined;
      /** The new one is of another kind, or mounted another way: its life is not that of those before. */
      otherKind?: true | undefined;
    }
  /** The old part stays on, but altered or mounted another way: from here on it is another kind of part. */
  | { kind: 'modified'; cardId: CardId; position: string | null; words: string }
  /** The car drives no further. Said again while it is out, the later one puts the cause right. */
  | {
      kind: 'out';
      /** It may start again on the next leg; else it is out for good. */
      forDay: boolean;
      /** Null: not stated. */
      cause: OutCause | null;
      /** The job whose part was the cause. Null: none, or not known. */
      cardId: CardId | null;
      words: string;
    }
  /** The car goes on after it was out. */
  | { kind: 'restarted'; words: string }
  /** Done away from a service, such as at home before the start, without readings or findings: the cards count from here on. */
  | { kind: 'prepared'; cardIds: CardId[] }
  /** One person says what was so before work began. It is their word, never that the car is safe. */
  | { kind: 'gateChecked'; checks: GateCheck[] }
  /** What was checked may be so no longer. */
  | { kind: 'gateOpened'; because: GateChange }
  /** The lasting repair of what a task had left as a temporary one. */
  | { kind: 'madeGood'; of: TaskId; words: string }
  /** A photo of a piece of work, or of a snag by its repair. The id of the fact is the photo's. */
  | {
      kind: 'photo';
      of: TaskId;
      /** What is to be seen, such as the finding; may be empty. */
      words: string;
      /** Of the file as the phone made it: whoever brings it later, it is this one or none. */
      bytes: number;
      /** Of the same file, in hexadecimal letters. */
      sha256: string;
    }
  /**
   * One tyre as it is from here on. Values not measured this time are null and say nothing of the ones before.
   * Tread in tenths of a millimetre, pressures in millibar above the air's, all whole.
   */
  | {
      kind: 'tyre';
      tyreId: TyreId;
      /** What is written on it, such as the number of its label. */
      mark: string;
      compound: string;
      place: TyrePlace;
      treadTenths: number | null;
      coldMillibar: number | null;
      hotMillibar: number | null;
    }
  /** A setting of the car was changed. `from` and `to` as they are spoken, such as "12 clicks". */
  | {
      kind: 'setting';
      /** What was changed, such as "bump". */
      setting: string;
      position: string | null;
      from: string;
      to: string;
      askedBy: SettingAsker;
      /** It was put back to what it was at the start of the event. */
      backToBase: boolean;
    };

export type CarFactKind = CarFact['kind'];

/** What was recorded, where, and by whom. A projection row. */
export interface RecordedFact {
  factId: FactId;
  entryId: EntryId;
  at: FactPlace;
  fact: CarFact;
  recordedBy: PersonId;
  withdrawn: boolean;
  changedSeq: number;
  changedBy: PersonId;
}
