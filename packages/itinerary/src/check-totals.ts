import type { Assembly } from './assemble-draft';
import type { DraftPoint } from './draft';
import { formatKilometres } from './format';
import { LEG_TOTAL_TOLERANCE_METRES, ROW_TOTAL_TOLERANCE_METRES } from './limits';
import type { ItineraryProblem } from './model';
import type { ColumnKey } from './table-columns';
import type { PointRow, TableReading, TotalRow } from './table-row';

/** Printed sums against the rows: of each row, and of legs and event. */
export function checkTotals(assembly: Assembly, placeOf: TableReading['placeOf']): ItineraryProblem[] {
  return [
    ...assembly.rows.flatMap((row, index) => checkRowTotal(row, index, assembly.draft.points, placeOf)),
    ...assembly.totals.flatMap((total) =>
      checkSumRow(total.row, assembly.draft.points.slice(0, total.pointsAbove), placeOf),
    ),
  ];
}

/** A control's total is its road, or its road and the stage since the time control before it: both are published. */
function checkRowTotal(
  row: PointRow,
  index: number,
  points: readonly DraftPoint[],
  placeOf: TableReading['placeOf'],
): ItineraryProblem[] {
  const point = points[index];
  if (!point || row.totalMetres === null || row.unreadable.size > 0) return [];
  const own = point.metres ?? 0;
  const block = sumOf(blockBefore(points, index), ['stage', 'control']);
  if (block === null) return [];
  if ([own, block].some((sum) => Math.abs(sum - (row.totalMetres ?? 0)) <= ROW_TOTAL_TOLERANCE_METRES))
    return [];
  const place = placeOf('totalKm');
  const sum = formatKilometres(block);
  const message = `${point.label} shows ${formatKilometres(row.totalMetres)} km in total, but stage and road make ${sum} km. Correct the total, the stage or the road.`;
  return [{ row: row.row, ...place, code: 'total-mismatch', message, severity: 'error' }];
}

/** Road to a control from the last stage or timed control before it, and that stage. */
function blockBefore(points: readonly DraftPoint[], index: number): DraftPoint[] {
  const block: DraftPoint[] = [];
  for (let at = index; at >= 0; at -= 1) {
    const point = points[at];
    if (!point || (at < index && point.kind === 'control' && !point.roles.includes('refuel'))) break;
    block.push(point);
    if (point.kind === 'stage') break;
  }
  return block;
}

function checkSumRow(
  total: TotalRow,
  pointsAbove: readonly DraftPoint[],
  placeOf: TableReading['placeOf'],
): ItineraryProblem[] {
  const leg = pointsAbove.at(-1)?.leg;
  const ofLeg = pointsAbove.filter((point) => point.leg === leg);
  const section = pointsAbove.at(-1)?.section;
  const ofSection = pointsAbove.filter((point) => point.section === section);
  const scopes = {
    section: [ofSection],
    leg: [ofLeg],
    event: [pointsAbove],
    either: [ofLeg, pointsAbove],
    any: [ofSection, ofLeg, pointsAbove],
  }[total.scope];
  const figures: [ColumnKey, number | null, (points: readonly DraftPoint[]) => number | null][] = [
    ['stageKm', total.stageMetres, (points) => sumOf(points, ['stage'])],
    ['roadKm', total.roadMetres, (points) => sumOf(points, ['control'])],
    ['totalKm', total.totalMetres, (points) => sumOf(points, ['stage', 'control'])],
  ];
  return figures.flatMap(([key, printed, sum]) => {
    const sums = scopes.map(sum);
    if (
      printed === null ||
      sums.some((one) => one === null || Math.abs(one - printed) <= LEG_TOTAL_TOLERANCE_METRES)
    )
      return [];
    const place = placeOf(key);
    const message = `The ${place.field} of this sum is ${formatKilometres(printed)}, but the rows above make ${formatKilometres(sums[0] ?? 0)}. Check the rows for a missing or mistyped figure.`;
    return [{ row: total.row, ...place, code: 'total-differs', message, severity: 'warning' as const }];
  });
}

/** Null where a figure could not be read: then no sum is right or wrong. */
function sumOf(points: readonly DraftPoint[], kinds: readonly DraftPoint['kind'][]): number | null {
  if (points.some((point) => point.unreadable.has('stageKm') || point.unreadable.has('roadKm'))) return null;
  return points.reduce((sum, point) => sum + (kinds.includes(point.kind) ? (point.metres ?? 0) : 0), 0);
}
