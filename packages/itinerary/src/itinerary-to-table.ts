import { rolesAtPlace, roleText } from './control-roles';
import { DEFAULT_START_INTERVAL_SECONDS } from './due-at';
import { findRepeat } from './find-repeat';
import type { ControlPoint, Itinerary, Point, StagePoint, StartBlock } from './model';
import { COLUMN_HEADINGS, type ColumnKey } from './table-columns';
import { dateOf, printedClock } from './wall-clock';

const STANDARD_COLUMNS: readonly ColumnKey[] = [
  'id',
  'location',
  'stageKm',
  'roadKm',
  'totalKm',
  'target',
  'due',
  'gap',
  'section',
];

/**
 * The itinerary as tab separated text in the published columns, for a spreadsheet or to edit and paste again.
 * `parseItineraryTable` with the same zone and timing reads an equal itinerary back, given one that `checkItinerary`
 * has no error for. The columns Start interval, Role and Repeat of are added only where the others do not say it
 * already. A section without a start block comes back with one of 60 seconds, which is what it means.
 *
 * @example
 * itineraryToTable(itinerary).split('\n')[0] // 'TC/SS\tLocation\tSS km\tRoad km\tTotal km\tTarget time\tFirst car due\tGap\tSection'
 */
export function itineraryToTable(itinerary: Itinerary): string {
  const rows = itinerary.points.map((point, index) => writePoint(itinerary, point, index));
  const columns = [
    ...STANDARD_COLUMNS,
    ...(itinerary.startBlocks.some(
      (block) => block.intervalSeconds !== DEFAULT_START_INTERVAL_SECONDS || block.fromPosition > 1,
    )
      ? (['interval'] as const)
      : []),
    ...(['role', 'repeatOf'] as const).filter((key) => rows.some((row) => row[key] !== undefined)),
  ];
  const lines = itinerary.points.flatMap((point, index) => {
    const line = columns.map((key) => quote(rows[index]?.[key] ?? '')).join('\t');
    if (point.leg === itinerary.points[index - 1]?.leg) return [line];
    return [`Leg ${point.leg}, ${dateOf(point.firstCarAt, itinerary.timeZone)}`, line];
  });
  return `${[columns.map((key) => COLUMN_HEADINGS[key]).join('\t'), ...lines].join('\n')}\n`;
}

type WrittenRow = Partial<Record<ColumnKey, string>>;

function writePoint(itinerary: Itinerary, point: Point, index: number): WrittenRow {
  const before = itinerary.points[index - 1];
  const shared: WrittenRow = {
    id: point.id,
    location: point.name,
    due: printedClock(point.firstCarAt, itinerary.timeZone),
    section: String(point.section),
  };
  if (point.section !== before?.section) shared.interval = writeBlocks(itinerary.startBlocks, point.section);
  return point.kind === 'stage'
    ? { ...shared, ...writeStage(itinerary, point, index) }
    : { ...shared, ...writeControl(itinerary, point, index) };
}

function writeStage(itinerary: Itinerary, stage: StagePoint, index: number): WrittenRow {
  const row: WrittenRow = {
    stageKm: kilometres(stage.stageMetres),
    totalKm: kilometres(stage.stageMetres),
    gap: duration(stage.gapSeconds),
  };
  const earlier = itinerary.points.slice(0, index).filter((point) => point.kind === 'stage');
  if (findRepeat(stage.name, earlier) !== stage.repeatOf) row.repeatOf = stage.repeatOf ?? 'none';
  return row;
}

function writeControl(itinerary: Itinerary, control: ControlPoint, index: number): WrittenRow {
  const before = itinerary.points[index - 1];
  const row: WrittenRow = {
    roadKm: kilometres(control.roadMetres),
    totalKm: kilometres(control.roadMetres + (before?.kind === 'stage' ? before.stageMetres : 0)),
  };
  if (control.allowedSeconds !== null) row.target = duration(control.allowedSeconds);
  const after = itinerary.points.slice(index + 1);
  const byName = rolesAtPlace(control.id, control.name, {
    isFirstOfLeg: control.leg !== before?.leg,
    hasStageAfter: after.some((point) => point.kind === 'stage' && point.leg === control.leg),
  });
  if (byName.join() !== control.roles.join()) row.role = roleText(control.roles);
  return row;
}

function writeBlocks(blocks: readonly StartBlock[], section: number): string {
  const written = blocks
    .filter((block) => block.section === section)
    .map(
      (block) =>
        `${block.fromPosition === 1 ? '' : `from ${block.fromPosition}: `}${block.intervalSeconds} s`,
    );
  return written.join(', ');
}

/** Two decimals as published, three where a metre would be lost. */
function kilometres(metres: number): string {
  return (metres / 1000).toFixed(metres % 10 === 0 ? 2 : 3);
}

function duration(seconds: number): string {
  const two = (value: number) => String(value).padStart(2, '0');
  const clock = `${Math.floor(seconds / 3600)}:${two(Math.floor((seconds % 3600) / 60))}`;
  return seconds % 60 === 0 ? clock : `${clock}:${two(seconds % 60)}`;
}

function quote(cell: string): string {
  return /["\t\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
