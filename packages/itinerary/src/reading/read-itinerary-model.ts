import type { ItineraryTableOptions } from '../assemble-draft';
import type { ItineraryProblem } from '../model';
import type { ParsedItinerary } from '../parsed-itinerary';
import type { ColumnKey } from '../table-columns';

/** What a column means: a known one, nothing known (`null`), or the place of cells that belong to no column. */
export type ColumnMeaning = ColumnKey | 'surplus' | null;

export interface ReadHeading {
  /** As written; empty where the heading is blank. */
  text: string;
  meaning: ColumnMeaning;
  /** How figures under it are written unless a cell says otherwise. */
  unit: 'miles' | 'minutes' | null;
  problems: ItineraryProblem[];
}

export interface ReadCell {
  text: string;
  problems: ItineraryProblem[];
}

export interface ReadRow {
  /** 1-based row of the text it came from; the `row` of its problems. Rises from row to row. */
  sourceRow: number;
  /** As many as there are headings. */
  cells: ReadCell[];
  /** What concerns the row and none of its cells. */
  problems: ItineraryProblem[];
}

/** A line that is no row of the itinerary, so that nothing disappears unseen. */
export interface LeftOutLine {
  sourceRow: number;
  text: string;
  why: 'aboveTable' | 'pageLine' | 'repeatedHeadings' | 'ruler';
}

/** The text as it was understood: a rectangle of cells, each with what is wrong with it. */
export interface ReadTable {
  /** Cut at tabs, semicolons, commas or bars; or at the words of text copied from a PDF. */
  shape: 'delimited' | 'printed';
  /** 1-based row of the headings (of the first of two); null where the text has none. */
  headingRow: number | null;
  headings: ReadHeading[];
  rows: ReadRow[];
  leftOut: LeftOutLine[];
  /** What concerns the text as a whole. */
  problems: ItineraryProblem[];
}

export interface ItineraryRead {
  /** The itinerary with at most warnings, or every problem and no itinerary. */
  parsed: ParsedItinerary;
  /** Null where nothing could be made of the text. */
  table: ReadTable | null;
}

export type ReadItineraryOptions = ItineraryTableOptions;

/** A text cut into cells, before anything but its headings is understood. */
export interface CutTable {
  shape: ReadTable['shape'];
  headingRow: number | null;
  headings: Omit<ReadHeading, 'problems'>[];
  rows: { sourceRow: number; cells: string[] }[];
  leftOut: LeftOutLine[];
  /** Problems of cutting, beside those of reading. */
  problems: ItineraryProblem[];
}
