import type { EpochSeconds, Itinerary } from '../model';
import { routeMetresAt } from '../route-counters';
import type { PointTime } from './times-along';

/**
 * Where along the way a car is, in whole metres from the start of the event: by the times written, from there by the
 * times it is due at, and between two of them as if it drove evenly. Good for drawing only. Null before its start and
 * after its last point.
 *
 * @example
 * metresAlong(itinerary, timesAlong(question), now) // 41_250
 */
export function metresAlong(
  itinerary: Itinerary,
  times: readonly PointTime[],
  now: EpochSeconds,
): number | null {
  const reached = times.findLastIndex(({ writtenAt }) => writtenAt !== null && writtenAt <= now);
  const next = times.findIndex((time, index) => index > reached && time.at > now);
  const [from, to] = [times[next - 1], times[next]];
  if (!from || !to) return null;
  const fromMetres = routeMetresAt(itinerary, from.pointIndex);
  const metres = routeMetresAt(itinerary, to.pointIndex) - fromMetres;
  const point = itinerary.points[from.pointIndex];
  const { finishedAt } = from;
  if (point?.kind !== 'stage' || finishedAt === null) return fromMetres + evenly(metres, from.at, now, to.at);
  if (now < finishedAt) return fromMetres + evenly(point.stageMetres, from.at, now, finishedAt);
  const road = metres - point.stageMetres;
  return fromMetres + point.stageMetres + evenly(road, finishedAt, now, to.at);
}

function evenly(metres: number, from: EpochSeconds, now: EpochSeconds, to: EpochSeconds): number {
  return to > from ? Math.round((metres * (now - from)) / (to - from)) : metres;
}
