import type { ColumnKey } from '../table-columns';
import type { PrintedColumn } from './printed-header';
import type { Figure } from './printed-words';

export type PrintedRowKind = 'stage' | 'control' | 'refuel' | 'total';

export interface PlacedFigures {
  /** By index of the column. */
  cells: Map<number, string>;
  /** A whole figure in the right margin: the number of the section. */
  margin: string | null;
  /** What found no column. */
  surplus: string[];
}

export interface FigureHabits {
  /** Clocks are printed with two digits for the hour, so a single digit is a length of time. */
  clocksHaveTwoDigits: boolean;
}

/**
 * Gives each figure of a line its column: one for each column where they are as many; else by its place under the
 * headings, where columns are kept apart; else by its kind and the kind of row, in the order of the headings. A stage
 * has no road distance, a control no stage distance.
 */
export function placeFigures(
  figures: readonly Figure[],
  kind: PrintedRowKind,
  columns: readonly PrintedColumn[],
  habits: FigureHabits,
): PlacedFigures {
  const counted = figures.filter((figure) => figure.kind !== 'percent');
  return (
    placeOneToOne(counted, kind, columns) ??
    placeByPlace(counted, kind, columns) ??
    placeByKind(counted, kind, columns, habits)
  );
}

const DISTANCES: readonly ColumnKey[] = ['stageKm', 'roadKm', 'totalKm'];

function fits(figure: Figure, meaning: ColumnKey | null, kind: PrintedRowKind): boolean {
  if (figure.kind === 'dash' || meaning === null) return true;
  if (kind === 'stage' && meaning === 'roadKm') return false;
  if (kind === 'control' && meaning === 'stageKm') return false;
  if (DISTANCES.includes(meaning))
    return figure.kind === 'distance' || figure.kind === 'integer' || isBroken(figure, /[.,]/);
  if (meaning === 'target' || meaning === 'due' || meaning === 'gap')
    return figure.kind === 'time' || isBroken(figure, /[:h]/);
  return meaning === 'section' && figure.kind === 'integer';
}

function isBroken(figure: Figure, mark: RegExp): boolean {
  return figure.kind === 'malformed' && mark.test(figure.text);
}

function figureColumns(columns: readonly PrintedColumn[]): number[] {
  return columns.flatMap(({ meaning }, index) => (meaning === 'id' || meaning === 'location' ? [] : [index]));
}

function placeOneToOne(
  figures: readonly Figure[],
  kind: PrintedRowKind,
  columns: readonly PrintedColumn[],
): PlacedFigures | null {
  const places = figureColumns(columns);
  if (figures.length !== places.length || !figures.some((figure) => figure.kind === 'dash')) return null;
  const cells = new Map<number, string>();
  for (const [order, index] of places.entries()) {
    const figure = figures[order];
    if (!figure || !fits(figure, columns[index]?.meaning ?? null, kind)) return null;
    cells.set(index, figure.text);
  }
  return { cells, margin: null, surplus: [] };
}

function placeByPlace(
  figures: readonly Figure[],
  kind: PrintedRowKind,
  columns: readonly PrintedColumn[],
): PlacedFigures | null {
  const places = figureColumns(columns);
  if (columns.some((column) => column.place === null) || columns.length === 0) return null;
  const cells = new Map<number, string>();
  let margin: string | null = null;
  let after = -1;
  for (const [order, figure] of figures.entries()) {
    const distance = (index: number) => {
      const place = columns[index]?.place;
      return place
        ? Math.max(place.start - figure.end, figure.start - place.end, 0)
        : Number.POSITIVE_INFINITY;
    };
    const nearest = places.toSorted((one, other) => distance(one) - distance(other))[0];
    if (nearest === undefined) return null;
    const isMargin =
      figure.kind === 'integer' && order === figures.length - 1 && columns[nearest]?.meaning !== 'section';
    if (isMargin && distance(nearest) > 1) margin = figure.text;
    else if (
      nearest <= after ||
      distance(nearest) > 4 ||
      !fits(figure, columns[nearest]?.meaning ?? null, kind)
    )
      return null;
    else {
      cells.set(nearest, figure.text);
      after = nearest;
    }
  }
  return { cells, margin, surplus: [] };
}

function placeByKind(
  all: readonly Figure[],
  kind: PrintedRowKind,
  columns: readonly PrintedColumn[],
  habits: FigureHabits,
): PlacedFigures {
  const figures = all.filter((figure) => figure.kind !== 'dash');
  const cells = new Map<number, string>();
  const surplus: string[] = [];
  const indexOf = (key: ColumnKey) => columns.findIndex((column) => column.meaning === key);
  const last = figures.at(-1);
  const margin = last?.kind === 'integer' && figures.length > 1 ? last : null;
  const rest = figures.filter((figure) => figure !== margin);
  const times = rest.filter((figure) => figure.kind === 'time' || isBroken(figure, /[:h]/));
  const distances = rest.filter((figure) => !times.includes(figure));
  const put = (given: readonly Figure[], keys: readonly ColumnKey[]) => {
    const places = keys.map(indexOf).filter((index) => index !== -1);
    places.sort((one, other) => one - other);
    given.forEach((figure, order) => {
      const index = places[order];
      if (index === undefined) surplus.push(figure.text);
      else cells.set(index, figure.text);
    });
  };
  const known = DISTANCES.filter((key) => indexOf(key) !== -1);
  // A refuel in brackets prints the distance to the next one; a plain figure is road driven to get there.
  const isNotice = kind === 'refuel' && distances.some((figure) => figure.text.startsWith('('));
  put(distances, distanceColumns(distances.length, kind === 'refuel' && !isNotice ? 'control' : kind, known));
  put(times, timeColumns(times, habits));
  return { cells, margin: margin?.text ?? null, surplus };
}

function distanceColumns(
  count: number,
  kind: PrintedRowKind,
  known: readonly ColumnKey[],
): readonly ColumnKey[] {
  if (count >= 3 || kind === 'refuel') return known;
  if (kind === 'stage') return known.filter((key) => key !== 'roadKm');
  if (kind === 'control') return known.filter((key) => key !== 'stageKm');
  return count === 2 && known.length === 3 ? ['stageKm', 'totalKm'] : known;
}

function timeColumns(times: readonly Figure[], habits: FigureHabits): readonly ColumnKey[] {
  if (times.length !== 1) return ['target', 'due'];
  const text = times[0]?.text ?? '';
  const isLength =
    /^0[:h]/.test(text) || /min/i.test(text) || (habits.clocksHaveTwoDigits && /^\d[:h]/.test(text));
  return isLength ? ['target'] : ['due'];
}
