import type { ItineraryProblem } from '../model';

/** How the event went for a car. `notKnown`: it started, and nobody has said how it ended. */
export type CarOutcome = 'finished' | 'out' | 'outForDay' | 'notStarted' | 'notKnown';
/** Why it stopped, as it was stated. `time`: over the time that the event allows. `withdrawn`: the team's own choice. */
export type StatedCause = 'mechanical' | 'offRoad' | 'time' | 'withdrawn' | 'other';
/** Who says so: the crew stated it, an official saw it, or nobody is sure. */
export type CauseSource = 'crew' | 'official' | 'unsure';

/** Where a car stopped: inside a stage, or after a stage or control that it still reached. */
export interface StopPlace {
  relation: 'in' | 'after';
  pointId: string;
}

/** Why and where a car stopped. */
export interface CarStop {
  place: StopPlace;
  cause: StatedCause;
  /** Of a mechanical cause, in a free word; empty when it was not said. */
  part: string;
  source: CauseSource;
}

/** One row of the list: a car, and one thing that became of it. */
export interface CarRecord {
  carNumber: string;
  /** Empty when the organiser gave none. */
  className: string;
  outcome: CarOutcome;
  /** Of a car that is out, or out for the day. */
  stop: CarStop | null;
  /** Of a car of which nobody knows the end: where it was seen last and still running. */
  reached: StopPlace | null;
  /** The section from which a car that was out for the day goes on; null when it did not come back. */
  backFromSection: number | null;
}

/** What a pasted list says. With any problem some of its rows are not in `records`. */
export interface ReadRetirementList {
  /** In the order of the list. */
  records: CarRecord[];
  /** By row and column of the pasted text, both from 1. */
  problems: ItineraryProblem[];
}
