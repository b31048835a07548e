/** Why the watching of a part ended. Only `failed` is a failure; of all else the part was still good. See rules.md. */
export type Ending =
  | 'failed'
  | 'running'
  | 'withdrawn'
  | 'notFinished'
  | 'restarted'
  | 'replaced'
  | 'modified'
  | 'placeUnknown';

/** How the watching of a part began. */
export type Origin = 'new' | 'carried' | 'unknown' | 'repaired' | 'modified' | 'resumed';

/** Where it was written down. */
export interface Spot {
  eventId: string;
  point: number;
}

/**
 * One part watched without a break. `from`, `to` and `goodTo` are what the car has run in all, by the counter and in its
 * unit; the age of the part is `entryAge` + distance since `from`.
 */
export interface Exposure {
  carId: string;
  cardId: string;
  position: string | null;
  counter: string;
  /** 1, 2, 3 …: which part of this place, as far as the log knows. */
  part: number;
  /** 0 at first, one more with every modification. */
  design: number;
  origin: Origin;
  /** Age at `from`: 0 for a new part, more for one that came to be watched later (left-truncated), null when not known. */
  entryAge: number | null;
  from: number;
  /** Where the failure was seen or the watching ended. */
  to: number;
  /**
   * The last place where it is known to have been good. A failure lies after it and not beyond `to`; equal, it is known
   * exactly. In a resumed watching it may lie before `from`: nobody has looked since.
   */
  goodTo: number;
  ending: Ending;
  began: Spot;
  ended: Spot;
}

/** One failure as the car's own history counts it: once, where it was seen. */
export interface PartFailure {
  carId: string;
  cardId: string;
  /** Null also when it was not said which of several places it was. */
  position: string | null;
  /** What the car had run in all. */
  at: number;
  spot: Spot;
}
