import type { EpochSeconds, Itinerary } from '../model';
import type { PositionsBySection } from '../position-in';
import type { PenaltyRules } from './penalty-rules';

/** What was written at a control, or the start (and finish) of a stage. */
export interface TimeRecord {
  pointIndex: number;
  /** At a control what it wrote, at a stage its start. */
  writtenAt: EpochSeconds;
  /** At a stage, its flying finish. */
  finishedAt?: EpochSeconds | null;
  /** Of the minutes lost on the way here, those the event cost: a delayed stage, a queue, a closed road. */
  heldMinutes?: number;
}

export interface LatenessQuestion {
  itinerary: Itinerary;
  /** Start positions by the section they hold from. */
  positions: PositionsBySection;
  rules: PenaltyRules;
  /** In any order; a control without a record is one the car has not been written at yet. */
  records: readonly TimeRecord[];
}
