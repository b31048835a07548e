import type { CardAsSent } from '../card-as-sent';

/** A card as a table holds it: ids are given when it is saved. */
export type TableCard = CardAsSent;

/** The columns, by what they hold. */
export type CardField =
  | 'name'
  | 'kind'
  | 'place'
  | 'every'
  | 'tolerance'
  | 'dueDate'
  | 'minutes'
  | 'people'
  | 'shortestService'
  | 'remote'
  | 'dust'
  | 'water'
  | 'rough'
  | 'night'
  | 'jumps'
  | 'together'
  | 'newPart'
  | 'looks'
  | 'readings'
  | 'signature'
  | 'caution'
  | 'tools'
  | 'instruction'
  | 'starter';

export type CardTableCode =
  /** Nothing is written, or headings alone. */
  | 'empty'
  | 'tooLong'
  | 'tooManyRows'
  /** A quote that never ends, or text behind one that did. */
  | 'quote'
  | 'headingUnknown'
  | 'headingTwice'
  | 'headingMissing'
  /** More cells than headings. */
  | 'cellsBeyond'
  | 'missing'
  | 'notANumber'
  | 'notAChoice'
  | 'notADate'
  | 'outOfRange'
  | 'tooManyItems'
  | 'textTooLong'
  /** Two cells of one card say different things. */
  | 'contradiction';

/** What is wrong with one cell, and what to do about it. */
export interface CardTableProblem {
  /** Counted from 1 as pasted, empty rows included; null when it is the table as a whole. */
  row: number | null;
  /** Counted from 1; null when it is the row as a whole. */
  column: number | null;
  /** The heading of the column, or '' when there is none. */
  field: string;
  code: CardTableCode;
  /** A sentence or two for a person. */
  message: string;
}

export type ReadCardTable = { ok: true; cards: TableCard[] } | { ok: false; problems: CardTableProblem[] };

export const MOST_TABLE_CARDS = 300;
export const MOST_TABLE_CHARACTERS = 300_000;
/** More than anybody mends at once; mending the first ones often mends the rest. */
export const MOST_TABLE_PROBLEMS = 200;
