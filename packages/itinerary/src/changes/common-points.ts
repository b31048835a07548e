import type { Itinerary, Point } from '../model';

export interface CommonPoint {
  before: Point;
  after: Point;
  beforeIndex: number;
  afterIndex: number;
}

/** Points that both versions have, by name and kind, in the order of the later one. */
export function commonPoints(before: Itinerary, after: Itinerary): CommonPoint[] {
  const indexOf = new Map(before.points.map((point, index) => [nameOf(point), index]));
  return after.points.flatMap((point, afterIndex) => {
    const beforeIndex = indexOf.get(nameOf(point));
    const earlier = beforeIndex === undefined ? undefined : before.points[beforeIndex];
    return beforeIndex !== undefined && earlier
      ? [{ before: earlier, after: point, beforeIndex, afterIndex }]
      : [];
  });
}

/** Points of one version that the other has not, with the name of the point before each. */
export function missingPoints(of: Itinerary, other: Itinerary): { point: Point; afterId: string | null }[] {
  const names = new Set(other.points.map(nameOf));
  return of.points.flatMap((point, index) =>
    names.has(nameOf(point)) ? [] : [{ point, afterId: of.points[index - 1]?.id ?? null }],
  );
}

function nameOf(point: Point): string {
  return `${point.kind} ${point.id}`;
}
