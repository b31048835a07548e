import type { ControlId, ItineraryProblem } from '../model';

/** One car at one time control, as an organiser wrote it down. */
export interface ControlPass {
  carNumber: string;
  controlId: ControlId;
  /** Whole minutes after the due one; below 0 when it was early. */
  lateMinutes: number;
  /** The time written there, in whole minutes of the day; null when only the minutes late were given. */
  atMinute: number | null;
}

/** What a pasted list of times says. With any problem some of its rows are not in `passes`. */
export interface ReadTimeList {
  /** In the order of the list. */
  passes: ControlPass[];
  /** By row and column of the pasted text, both from 1. */
  problems: ItineraryProblem[];
}
