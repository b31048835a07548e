import type { CarFact, RecordedFact } from '../car-fact';
import { drivenFrom } from '../facts-in-order';
import type { EntryId, Finding, TaskId } from '../model';
import { type PointOf, pointFinder } from '../point-of-place';
import { taskRefOf } from '../task-ref-of';
import type { DoneCard, LoggedEvent } from './logged-event';
import { partIdOf, type WatchedPart } from './part-of';

/** One word of the log on one part, in the shape of reliability's `PartRecord`. */
export type LifeRecord =
  | {
      kind: 'closed';
      point: number;
      cardId: string;
      findings: Pick<Finding, 'position' | 'grade' | 'newPart'>[];
    }
  | (Placed & { kind: 'broke'; where: 'sinceLastPoint' | 'here' })
  | (Placed & { kind: 'fitted'; because: 'preventive' | null })
  | (Placed & { kind: 'madeGood' })
  | (Placed & { kind: 'modified'; newPart: boolean })
  | {
      kind: 'out';
      point: number;
      cause: string | null;
      cardId: string | null;
      position: null;
      where: 'sinceLastPoint';
    }
  | { kind: 'restarted'; point: number };

interface Placed {
  point: number;
  cardId: string;
  position: string | null;
}

/**
 * What one event's log says of one part of the car: at one point first the work that was closed there, then the facts in
 * the order of the log, since a new part goes on after the look that asked for it. Rules M1 to M8 of reliability's rules.md.
 *
 * @param pointOf of its itinerary, where several parts are asked about
 * @example
 * partRecordsOf(logged, { cardId: 'belt', lookId: null }) // [{ kind: 'closed', point: 6, cardId: 'belt', findings: [] }]
 */
export function partRecordsOf(
  logged: LoggedEvent,
  part: WatchedPart,
  pointOf: PointOf = pointFinder(logged.itinerary),
): LifeRecord[] {
  const closed = logged.done.flatMap((done) => {
    const point = pointOf({ kind: 'service', serviceId: done.serviceId });
    return done.cardId === part.cardId && point !== null ? [closedOf(done, point, part)] : [];
  });
  const recorded = logged.facts
    .toSorted((one, other) => one.changedSeq - other.changedSeq)
    .flatMap((fact) => {
      const pointIndex = pointOf(fact.at);
      return pointIndex === null ? [] : recordsOf(fact, pointIndex, logged, part);
    });
  return [...closed, ...recorded];
}

function closedOf({ findings }: Pick<DoneCard, 'findings'>, point: number, part: WatchedPart): LifeRecord {
  const own = findings.filter(({ lookId }) => lookId === part.lookId);
  const said = own.map(({ lookId: _look, words: _words, ...found }) => found);
  return { kind: 'closed', point, cardId: partIdOf(part), findings: said };
}

function recordsOf(
  { fact, at, entryId }: RecordedFact,
  pointIndex: number,
  logged: LoggedEvent,
  part: WatchedPart,
): LifeRecord[] {
  const isAtStart = at.kind === 'road' && at.afterStageId === null;
  const point = isAtStart ? 0 : drivenFrom({ at, pointIndex }, logged.itinerary);
  const cardId = partIdOf(part);
  if (fact.kind === 'madeGood') return madeGoodOf(fact.of, entryId, point, logged, part);
  if (fact.kind === 'prepared') {
    return fact.cardIds.includes(part.cardId) ? [closedOf({ findings: [] }, point, part)] : [];
  }
  if (part.lookId !== null) return [];
  if (fact.kind === 'incident' && fact.brokenCardId === part.cardId) {
    const where = at.kind === 'road' ? 'sinceLastPoint' : 'here';
    return [{ kind: 'broke', point, cardId, position: cornerOf(fact.place), where }];
  }
  if (fact.kind === 'fitted' && fact.cardId === part.cardId) return fittedOf(fact, point);
  if (fact.kind === 'modified' && fact.cardId === part.cardId) {
    return [{ kind: 'modified', point, cardId, position: fact.position, newPart: false }];
  }
  return [];
}

/** The old part failed before the new one went on: worn out is at its end here, broken since the last point. */
function fittedOf(
  { cardId: id, position, because, otherKind }: Extract<CarFact, { kind: 'fitted' }>,
  point: number,
): LifeRecord[] {
  const place = { point, cardId: partIdOf({ cardId: id, lookId: null }), position };
  const where = because === 'wornOut' ? 'here' : 'sinceLastPoint';
  const failed = because === 'wornOut' || because === 'broke';
  const broke: LifeRecord[] = failed ? [{ kind: 'broke', ...place, where }] : [];
  if (otherKind) return [...broke, { kind: 'modified', ...place, newPart: true }];
  return [...broke, { kind: 'fitted', ...place, because: failed || !because ? null : 'preventive' }];
}

/** At the places of the temporary repair it makes good; of the whole part where that work does not stand in this event. */
function madeGoodOf(of: TaskId, madeIn: EntryId, point: number, { done }: LoggedEvent, part: WatchedPart) {
  const { source, serviceId, entryId } = taskRefOf(of);
  if (source.kind !== 'card' || source.cardId !== part.cardId) return [];
  const work = done.filter((each) => each.cardId === part.cardId && each.serviceId === serviceId);
  const repaired = work
    .flatMap(({ findings }) => findings)
    .filter(({ lookId, grade }) => lookId === part.lookId && grade === 'temporaryRepair');
  const isKnown = entryId === madeIn && work.length > 0;
  const positions = isKnown ? new Set(repaired.map(({ position }) => position)) : [null];
  const cardId = partIdOf(part);
  return [...positions].map((position): LifeRecord => ({ kind: 'madeGood', point, cardId, position }));
}

const CORNERS_OF_PLACES: Readonly<Record<string, string>> = {
  frontLeft: 'FL',
  frontRight: 'FR',
  rearLeft: 'RL',
  rearRight: 'RR',
};

/** The wheel of a place of the car plan; null where it is at none. */
function cornerOf(place: string | null): string | null {
  return place === null ? null : (CORNERS_OF_PLACES[place] ?? null);
}
