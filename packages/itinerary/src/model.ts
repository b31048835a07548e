/**
 * The itinerary as every other part of Halfshaft sees it. Whole numbers only: metres, seconds, and instants as
 * whole seconds since the Unix epoch. Times of day never appear here: they are resolved once, against the event's
 * time zone, when a version is read, so that a phone and the server agree to the digit.
 */

/** A control's printed name, such as `TC5B`. A string and never a number: the letter chain carries meaning. */
export type ControlId = string;
/** A stage's printed name, such as `SS5`. */
export type StageId = string;
/** The letter of a visit to service, `A`, `B`, `C` … in driving order over the whole event. */
export type ServiceId = string;
/** Whole seconds since 1970-01-01T00:00:00Z. */
export type EpochSeconds = number;

/** What a control does. One control may do several things at once ("regroup out / service in"). */
export type ControlRole =
  | 'start'
  | 'timeControl'
  | 'serviceIn'
  | 'serviceOut'
  | 'remoteServiceIn'
  | 'remoteServiceOut'
  | 'regroupIn'
  | 'regroupOut'
  | 'parcFermeIn'
  | 'parcFermeOut'
  | 'technicalIn'
  | 'technicalOut'
  | 'tyreZoneIn'
  | 'tyreZoneOut'
  | 'refuel'
  | 'finish';

interface PointBase {
  /** 1-based, in driving order over the whole event. */
  leg: number;
  /** 1-based, running through the whole event; a new section begins after each regroup and each leg. */
  section: number;
  name: string;
  /** When the car in start position 1 is due here (at a stage: its start), as planned. */
  firstCarAt: EpochSeconds;
}

/** A control on the road. */
export interface ControlPoint extends PointBase {
  kind: 'control';
  id: ControlId;
  roles: ControlRole[];
  /** Road distance from the point before (from a stage: from its finish); never includes stage distance. */
  roadMetres: number;
  /** Target time from the point it is timed from (see `Itinerary.roadTimedFrom`); null where none is printed. */
  allowedSeconds: number | null;
}

/** A special stage. */
export interface StagePoint extends PointBase {
  kind: 'stage';
  id: StageId;
  stageMetres: number;
  /** From the due time at the stage's own time control to the stage start. Three minutes unless the event says otherwise. */
  gapSeconds: number;
  /** The earlier running of the same stage, or null. */
  repeatOf: StageId | null;
}

export type Point = ControlPoint | StagePoint;

/**
 * From this start position on (until the next block of the same section), cars follow at this interval.
 * The first block of a section starts at position 1.
 */
export interface StartBlock {
  section: number;
  fromPosition: number;
  intervalSeconds: number;
}

export interface Itinerary {
  /** IANA name of the event's time zone, such as `Europe/Vienna`. */
  timeZone: string;
  /** Whether the road section after a stage is timed from the stage's start or from its finish. */
  roadTimedFrom: 'stageStart' | 'stageFinish';
  /** In driving order. */
  points: Point[];
  /** Sorted by section, then by `fromPosition`. A section without a block uses 60 seconds. */
  startBlocks: StartBlock[];
}

/** One visit to a service area: from its in-control to its out-control. */
export interface ServiceWindow {
  id: ServiceId;
  kind: 'service' | 'remoteService';
  /** Indexes into `Itinerary.points`. */
  inIndex: number;
  outIndex: number;
  inControl: ControlId;
  outControl: ControlId;
  name: string;
  leg: number;
  section: number;
  allowedSeconds: number;
}

/** The conditions of a stage, each from 0 (none) to 1000 (as bad as it gets), per mille. Absent means 0. */
export type ConditionName = 'dust' | 'water' | 'rough' | 'night' | 'jumps';
export type Conditions = Partial<Record<ConditionName, number>>;

/** What a crew confirmed of one stage: it was driven, or it was not (cancelled, or the car did not reach it). */
export interface StageRun {
  stageId: StageId;
  driven: boolean;
  conditions: Conditions;
}

/** Something wrong with what was pasted or saved: where it stands, what is wrong, what to do. */
export interface ItineraryProblem {
  /** 1-based row of the pasted text as the person sees it, null when it concerns the whole table. */
  row: number | null;
  /** 1-based column, null when it concerns the row. */
  column: number | null;
  /** The heading of the column, or of the field. */
  field: string | null;
  code: string;
  /** One sentence a mechanic understands: what is wrong and what to do. */
  message: string;
  /** An error stops saving; a warning is told and may be saved. */
  severity: 'error' | 'warning';
}
