import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import { type EpochSeconds, type Point, segmentsBetween } from '@halfshaft/itinerary';
import { type ControlTime, stageKeyOf, type TimeRef, timeKeyOf, type WorkState } from '@halfshaft/worklog';
import type { Visit } from '../service/visit';
import { timesOfEntry } from './lateness-of';

/** One time on the road that may be written down: at a control, at the start of a stage or at its finish. */
export interface RoadTime extends TimeRef {
  pointIndex: number;
  /** "TC4", "Start of SS4", "Finish of SS4". */
  title: string;
  place: string;
  kind: 'control' | 'start' | 'finish';
  /** By the times written so far; of a finish, which no itinerary prints, an estimate. */
  dueAt: EpochSeconds;
  recorded: ControlTime | null;
}

/** A part of the way, without the controls of the services at its ends. */
export interface RoadPart {
  fromIndex: number;
  toIndex: number;
}

/** From the service before, or the start, to this one. */
export function roadTo({ services, serviceIndex, service }: Visit): RoadPart {
  return { fromIndex: (services[serviceIndex - 1]?.outIndex ?? -1) + 1, toIndex: service.inIndex };
}

/** From the last service to the finish; null while another service follows. */
export function roadHome({ services, serviceIndex, service }: Visit, replica: EventReplica): RoadPart | null {
  if (serviceIndex < services.length - 1) return null;
  return { fromIndex: service.outIndex + 1, toIndex: replica.itinerary.points.length };
}

/** Every time on a part of a car's way, in driving order. */
export function roadTimes(
  replica: EventReplica,
  state: WorkState,
  entry: EntryReplica,
  { fromIndex, toIndex }: RoadPart,
): RoadTime[] {
  const { points } = replica.itinerary;
  const { entryId } = entry;
  const along = timesOfEntry(replica, state, entry);
  return points.slice(fromIndex, toIndex).flatMap((point, offset): RoadTime[] => {
    const pointIndex = fromIndex + offset;
    const dueAt = along[pointIndex]?.dueAt ?? point.firstCarAt;
    const time = (kind: RoadTime['kind'], at: EpochSeconds): RoadTime => {
      const ref = { entryId, controlId: point.id, ...(kind === 'finish' ? { finish: true as const } : {}) };
      const recorded = state.times.get(timeKeyOf(ref)) ?? null;
      return {
        ...ref,
        pointIndex,
        kind,
        title: titleOf(point, kind),
        place: point.name,
        dueAt: at,
        recorded,
      };
    };
    if (point.kind === 'control') return isTimed(point) ? [time('control', dueAt)] : [];
    const startAt = along[pointIndex]?.at ?? dueAt;
    const times = [time('start', dueAt), time('finish', startAt + stageSeconds(replica, pointIndex))];
    const isDropped = state.stages.get(stageKeyOf({ entryId, stageId: point.id }))?.driven === false;
    return isDropped ? times.filter(({ recorded }) => recorded !== null) : times;
  });
}

/**
 * The one that most likely is to be written now: of those after the last one written, the last that is due already,
 * else the first. Null when nothing is left.
 */
export function nextRoadTime(times: readonly RoadTime[], now: EpochSeconds | null): RoadTime | null {
  const ahead = times.slice(times.findLastIndex(({ recorded }) => recorded !== null) + 1);
  const due = now === null ? undefined : ahead.findLast(({ dueAt }) => dueAt <= now);
  return due ?? ahead[0] ?? null;
}

function titleOf({ id }: Point, kind: RoadTime['kind']): string {
  if (kind === 'control') return id;
  return kind === 'start' ? `Start of ${id}` : `Finish of ${id}`;
}

/** No clock is kept at a refuel without a target time. */
function isTimed({ roles, allowedSeconds }: Extract<Point, { kind: 'control' }>): boolean {
  return allowedSeconds !== null || !roles.includes('refuel');
}

function stageSeconds({ itinerary }: EventReplica, pointIndex: number): number {
  const [stage] = segmentsBetween(itinerary, pointIndex, pointIndex + 1);
  return stage ? stage.endsAt - stage.startsAt : 0;
}
