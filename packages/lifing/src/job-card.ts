import type { LifingCard } from './model';

export type Drive = 'front' | 'rear' | 'four';
export type Surface = 'gravel' | 'tarmac' | 'snow';

/** Where on the car the work is: the places of the car plan. */
export type CarPlace =
  | 'engineBay'
  | 'underCar'
  | 'frontLeft'
  | 'frontRight'
  | 'rearLeft'
  | 'rearRight'
  | 'allCorners'
  | 'cockpit'
  | 'body'
  | 'boot'
  | 'wholeCar';

/** One thing to look at inside a round, in a few words. */
export interface Look {
  id: string;
  words: string;
}

/** A reading a card asks for when it is closed. */
export interface ReadingSpec {
  id: string;
  name: string;
  kind: 'wear' | 'level' | 'setValue' | 'passFail' | 'hint';
  /** Printed beside the number: mm, bar, V, l, Nm. */
  unit: string;
  /** Values are whole numbers; shown divided by ten to this power (mm with 1 decimal: 35 is 3.5 mm). */
  decimals: number;
  /** One value for each of these (`FL FR RL RR`), or none for a single value. */
  positions: string[];
  /** Out of order below this, in the whole-number unit; null when there is no lower limit. */
  low: number | null;
  /** Out of order above this; null when there is no upper limit. */
  high: number | null;
  required: boolean;
}

/** A job card, or a round: several looks by one person at one place, one duration, closed with one tap. */
export interface JobCard extends LifingCard {
  kind: 'job' | 'round';
  /** The starter card it began as, such as `starter:wheel-nuts`: what triggers name. Null for a team's own. */
  starterId: string | null;
  place: CarPlace;
  /**
   * Doing the job fits a new part, or one as good as new: a life begins again. False where the same part goes back on,
   * cleaned or adjusted, where it is only looked at, and for a round.
   */
  fitsNewPart: boolean;
  /** Empty for a job. */
  looks: Look[];
  readings: ReadingSpec[];
  /** A second, different person signs after it is closed. */
  needsSignature: boolean;
  /** What can hurt someone here; empty when nothing special. */
  caution: string;
  tools: string[];
  /** How to do it, in a sentence or two for a volunteer; empty when the name says it. */
  instruction: string;
}
