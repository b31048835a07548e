import type { ItineraryProblem } from '../model';

/** One car of a start list. */
export interface Starter {
  /** As on the doors; letters may follow or lead. */
  carNumber: string;
  /** Its place in the start order, from 1. */
  position: number;
  /** The section from which the place holds. */
  section: number;
}

/** What a pasted start list says. With any problem of severity error some of its lines are not in `starters`. */
export interface ReadStartList {
  /** In the order of the list. */
  starters: Starter[];
  /** By row and column of the pasted text, both from 1. */
  problems: ItineraryProblem[];
}
