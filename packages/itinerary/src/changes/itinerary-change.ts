import type {
  ControlId,
  ControlRole,
  EpochSeconds,
  Itinerary,
  ServiceId,
  ServiceWindow,
  StageId,
} from '../model';

/** One block of a section's start intervals. */
export interface IntervalBlock {
  fromPosition: number;
  intervalSeconds: number;
}

/** One thing that is not as it was in the version before; each says what, and by how much. */
export type ItineraryChange =
  | { kind: 'stageCancelled'; stageId: StageId; name: string; metres: number }
  | { kind: 'stageAdded'; stageId: StageId; name: string; metres: number; afterId: string | null }
  | { kind: 'stageLength'; stageId: StageId; beforeMetres: number; afterMetres: number }
  | {
      kind: 'serviceCancelled';
      service: ServiceWindow['kind'];
      serviceId: ServiceId;
      inControl: ControlId;
      seconds: number;
    }
  | {
      kind: 'serviceAdded';
      service: ServiceWindow['kind'];
      serviceId: ServiceId;
      inControl: ControlId;
      seconds: number;
    }
  | {
      kind: 'serviceLength';
      service: ServiceWindow['kind'];
      /** Its letter in the later version. */
      serviceId: ServiceId;
      inControl: ControlId;
      beforeSeconds: number;
      afterSeconds: number;
    }
  | {
      /** This car's times, from one point to another in driving order, all by the same. */
      kind: 'timesMoved';
      fromId: string;
      toId: string;
      points: number;
      /** Above 0 is later. */
      seconds: number;
      beforeAt: EpochSeconds;
      afterAt: EpochSeconds;
      timeZone: string;
    }
  | {
      /** From one refuel to the next; `start` and `finish` stand for the ends of the way. Null: there was no such stretch. */
      kind: 'refuelGap';
      fromId: string;
      toId: string;
      beforeMetres: number | null;
      afterMetres: number;
    }
  | { kind: 'startInterval'; section: number; before: IntervalBlock[]; after: IntervalBlock[] }
  | { kind: 'startPosition'; section: number; before: number; after: number }
  | { kind: 'controlRemoved'; id: ControlId; name: string }
  | { kind: 'controlAdded'; id: ControlId; name: string; afterId: string | null }
  | { kind: 'roadLength'; id: ControlId; beforeMetres: number; afterMetres: number }
  | { kind: 'targetTime'; id: ControlId; beforeSeconds: number | null; afterSeconds: number | null }
  | { kind: 'stageGap'; stageId: StageId; beforeSeconds: number; afterSeconds: number }
  | { kind: 'stageRepeat'; stageId: StageId; before: StageId | null; after: StageId | null }
  | { kind: 'roles'; id: ControlId; before: ControlRole[]; after: ControlRole[] }
  | { kind: 'renamed'; id: string; before: string; after: string }
  | { kind: 'order'; id: string; afterId: string | null }
  | { kind: 'numbering'; of: 'leg' | 'section'; fromId: string; toId: string; before: number; after: number }
  | { kind: 'timedFrom'; before: Itinerary['roadTimedFrom']; after: Itinerary['roadTimedFrom'] }
  | { kind: 'timeZone'; before: string; after: string };
