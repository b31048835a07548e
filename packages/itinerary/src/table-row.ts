import type { ControlRole, ItineraryProblem, StageId } from './model';
import type { WrittenBlock } from './read-values';
import type { ColumnKey } from './table-columns';
import type { WallClock } from './wall-clock';

/**
 * A table after reading and before meaning: what each row says, in whole metres and seconds, with the row it stands
 * in. Any reader of any shape of text ends here; everything after knows nothing of cells.
 */
export interface TableReading {
  rows: TableRow[];
  /** What is wrong with the writing itself. */
  problems: ItineraryProblem[];
  /** Where a field is written, for problems found later: its 1-based column and its heading. */
  placeOf: (key: ColumnKey) => { column: number | null; field: string };
}

export type TableRow = PointRow | LegRow | TotalRow;

export interface PointRow {
  type: 'point';
  /** 1-based, as the person sees it. */
  row: number;
  kind: 'control' | 'stage';
  id: string;
  name: string;
  /** Named in a column of their own; null where the location has to tell. */
  roles: ControlRole[] | null;
  /** Stage distance of a stage, road distance of a control; null where the cell is empty. */
  metres: number | null;
  totalMetres: number | null;
  targetSeconds: number | null;
  clock: WallClock | null;
  gapSeconds: number | null;
  section: number | null;
  blocks: WrittenBlock[] | null;
  /** Undefined where nothing is written, null where "none" is. */
  repeatOf: StageId | null | undefined;
  /** Fields whose cell could not be read: already reported, so that nothing else is concluded from them. */
  unreadable: ReadonlySet<ColumnKey>;
}

export interface LegRow {
  type: 'leg';
  row: number;
  number: number | null;
  /** `YYYY-MM-DD` */
  date: string | null;
}

export interface TotalRow {
  type: 'total';
  row: number;
  /** A plain "Total" may be the leg's or the event's (`either`), or the section's as well (`any`). */
  scope: 'section' | 'leg' | 'event' | 'either' | 'any';
  stageMetres: number | null;
  roadMetres: number | null;
  totalMetres: number | null;
}
