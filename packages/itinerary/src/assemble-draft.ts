import { rolesAtPlace, rolesOf } from './control-roles';
import type { Draft, DraftPoint } from './draft';
import { excerpt } from './excerpt';
import { findRepeat } from './find-repeat';
import type { Itinerary, ItineraryProblem, StartBlock } from './model';
import type { ItineraryProblemCode } from './problem-code';
import type { WrittenTimes } from './resolve-times';
import type { LegRow, PointRow, TableReading, TotalRow } from './table-row';

/** What the table itself does not say. */
export interface ItineraryTableOptions {
  /** IANA name of the event's time zone. */
  timeZone: string;
  /** The day of the first row, `YYYY-MM-DD`, unless a leg row gives it. */
  startDate: string;
  roadTimedFrom: Itinerary['roadTimedFrom'];
  /** Seconds between two cars in a section whose rows name no interval. 60 unless given. */
  startIntervalSeconds?: number;
  /** Time control to stage start where neither a gap nor both times are printed. 180 unless given. */
  defaultGapSeconds?: number;
  /** Whom the printed times are for: position 1 unless given, or a notional car 0 one interval ahead of it. */
  printedFor?: 'carZero' | 'positionOne';
}

export interface Assembly {
  draft: Draft;
  written: WrittenTimes;
  /** Index for index with `draft.points`. */
  rows: PointRow[];
  /** Each sum with the number of points above it. */
  totals: { row: TotalRow; pointsAbove: number }[];
  problems: ItineraryProblem[];
}

const DEFAULT_GAP_SECONDS = 180;
const DEFAULT_START_INTERVAL_SECONDS = 60;

/** Puts rows together: legs, sections, roles, repeats and start blocks. Times stay as written. */
export function assembleDraft(reading: TableReading, options: ItineraryTableOptions): Assembly {
  const { rows, legs, dates, totals, problems } = placeInLegs(reading);
  const draft: Draft = {
    timeZone: options.timeZone,
    roadTimedFrom: options.roadTimedFrom,
    points: [],
    startBlocks: [],
  };
  const sections = new SectionCounter();
  rows.forEach((row, index) => {
    const leg = legs[index] ?? 1;
    const isFirstOfLeg = leg !== legs[index - 1];
    const hasStageAfter = rows.some((other, at) => at > index && legs[at] === leg && other.kind === 'stage');
    const point = createPoint(row, leg, { isFirstOfLeg, hasStageAfter }, draft.points);
    point.section = sections.next(row.section, isFirstOfLeg || point.roles.includes('regroupOut'));
    draft.points.push(point);
    if (row.kind === 'control' && !row.roles && rolesOf(row.name).unclear) {
      problems.push(
        at(
          reading,
          row.row,
          'location',
          'role-unclear',
          `“${excerpt(row.name)}” names a halt but not whether the car comes in or goes out. If it is one, write for example “Service in” or “Service out”.`,
          'warning',
        ),
      );
    }
  });
  draft.startBlocks = collectBlocks(
    draft,
    rows,
    reading,
    problems,
    options.startIntervalSeconds ?? DEFAULT_START_INTERVAL_SECONDS,
  );
  const written: WrittenTimes = {
    clocks: rows.map((row) => row.clock),
    dates,
    startDate: options.startDate,
    defaultGapSeconds: options.defaultGapSeconds ?? DEFAULT_GAP_SECONDS,
  };
  return { draft, written, rows, totals, problems };
}

function placeInLegs(reading: TableReading) {
  const rows: PointRow[] = [];
  const legs: number[] = [];
  const dates: (string | null)[] = [];
  const totals: Assembly['totals'] = [];
  const problems: ItineraryProblem[] = [];
  let leg = 1;
  let opened: LegRow | null = null;
  const tellIfEmpty = () => {
    if (opened)
      problems.push(
        at(
          reading,
          opened.row,
          'id',
          'leg-empty',
          `No control or stage follows this leg. Add its rows or delete row ${opened.row}.`,
        ),
      );
  };
  for (const row of reading.rows) {
    if (row.type === 'total') totals.push({ row, pointsAbove: rows.length });
    else if (row.type === 'leg') {
      tellIfEmpty();
      const number = opened ? leg : rows.length === 0 ? 1 : leg + 1;
      if (row.number !== null && row.number !== number) {
        problems.push(
          at(
            reading,
            row.row,
            'id',
            'leg-out-of-order',
            `Leg ${row.number} stands where leg ${number} should be. Number the legs 1, 2, 3 in driving order.`,
          ),
        );
      }
      leg = number;
      opened = row;
    } else {
      rows.push(row);
      legs.push(leg);
      dates.push(opened?.date ?? null);
      opened = null;
    }
  }
  tellIfEmpty();
  return { rows, legs, dates, totals, problems };
}

function createPoint(
  row: PointRow,
  leg: number,
  place: { isFirstOfLeg: boolean; hasStageAfter: boolean },
  earlier: readonly DraftPoint[],
): DraftPoint {
  const isStage = row.kind === 'stage';
  const stages = earlier.filter((point) => point.kind === 'stage');
  return {
    label: `${row.id} (row ${row.row})`,
    kind: row.kind,
    id: row.id,
    name: row.name,
    roles: isStage ? [] : (row.roles ?? rolesAtPlace(row.id, row.name, place)),
    leg,
    section: 0,
    metres: row.metres,
    allowedSeconds: isStage ? null : row.targetSeconds,
    // The target time printed on a stage's row is the one from its control to its start.
    gapSeconds: isStage ? (row.gapSeconds ?? row.targetSeconds) : null,
    repeatOf: isStage && row.repeatOf === undefined ? findRepeat(row.name, stages) : (row.repeatOf ?? null),
    at: null,
    unreadable: row.unreadable,
  };
}

/** Sections count up at each leg and after each regroup, unless the table prints their numbers. */
class SectionCounter {
  private section = 0;

  next(printed: number | null, begins: boolean): number {
    this.section = printed ?? (begins ? this.section + 1 : this.section);
    return this.section;
  }
}

function collectBlocks(
  draft: Draft,
  rows: readonly PointRow[],
  reading: TableReading,
  problems: ItineraryProblem[],
  defaultSeconds: number,
): StartBlock[] {
  const bySection = new Map<number, StartBlock[]>();
  draft.points.forEach(({ section }, index) => {
    const row = rows[index];
    const written = row?.blocks?.map((block) => ({ section, ...block })) ?? null;
    const before = bySection.get(section);
    if (row && written && before && before.length > 0 && !isSame(before, written)) {
      problems.push(
        at(
          reading,
          row.row,
          'interval',
          'interval-twice',
          `Section ${section} already has other start intervals. Write them once, on the first row of the section.`,
        ),
      );
    } else if (written) bySection.set(section, written);
    else if (!before) bySection.set(section, []);
  });
  const inOrder = [...bySection].sort(([one], [other]) => one - other);
  return inOrder.flatMap(([section, blocks]) =>
    blocks.length > 0 ? blocks : [{ section, fromPosition: 1, intervalSeconds: defaultSeconds }],
  );
}

function isSame(one: readonly StartBlock[], other: readonly StartBlock[]): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function at(
  reading: TableReading,
  row: number,
  key: Parameters<TableReading['placeOf']>[0],
  code: ItineraryProblemCode,
  message: string,
  severity: 'error' | 'warning' = 'error',
): ItineraryProblem {
  return { row, ...reading.placeOf(key), code, message, severity };
}
