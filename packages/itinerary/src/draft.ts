import type { ControlRole, EpochSeconds, Itinerary, StageId, StartBlock } from './model';
import type { ItineraryProblemCode } from './problem-code';
import type { ColumnKey } from './table-columns';

/**
 * An itinerary on its way to being one: the same points, where a value may still be unknown. The checks work on
 * drafts, so that a pasted table and a saved itinerary are held to the same rules.
 */
export interface Draft {
  timeZone: string;
  roadTimedFrom: Itinerary['roadTimedFrom'];
  points: DraftPoint[];
  startBlocks: StartBlock[];
}

export interface DraftPoint {
  /** How messages call it: `TC3 (row 5)`. */
  label: string;
  kind: 'control' | 'stage';
  id: string;
  name: string;
  roles: ControlRole[];
  leg: number;
  section: number;
  /** Stage distance of a stage, road distance of a control. */
  metres: number | null;
  /** Target time; of a control only. */
  allowedSeconds: number | null;
  /** Of a stage only. */
  gapSeconds: number | null;
  repeatOf: StageId | null;
  /** First car due. */
  at: EpochSeconds | null;
  /** Fields that could not be read, which is reported already. */
  unreadable: ReadonlySet<ColumnKey>;
}

/** A problem of a draft: which point (null: the whole), which field. */
export interface DraftProblem {
  pointIndex: number | null;
  key: ColumnKey | null;
  code: ItineraryProblemCode;
  message: string;
}

/** Whether a control lies on the road without being timed: the time allowed runs through it. */
export function isUntimedRefuel(point: Pick<DraftPoint, 'kind' | 'roles' | 'allowedSeconds'>): boolean {
  return point.kind === 'control' && point.roles.includes('refuel') && point.allowedSeconds === null;
}

/** The point a control's target time counts from: the last timed point before it; null before the first. */
export function timedFrom(points: readonly DraftPoint[], index: number): DraftPoint | null {
  for (let before = index - 1; before >= 0; before -= 1) {
    const point = points[before];
    if (point && !isUntimedRefuel(point)) return point;
  }
  return null;
}
