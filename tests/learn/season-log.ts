import type { Itinerary, Point } from '@halfshaft/itinerary';
import type { PartQuestion, PartRecord, WatchedEvent } from '@halfshaft/reliability';
import {
  ACTION_VERSION,
  type ActionBody,
  applyInPlace,
  type CarFact,
  decide,
  draftOf,
  emptyState,
  type FactPlace,
  numberEntries,
  taskIdOf,
  type WorkState,
} from '@halfshaft/worklog';

const MIA = { personId: 'mia', enteredBy: 'mia', mayManage: false, revokedAt: null };
const RULES = { needsSignature: false, requiredReadings: [], reopens: [], serviceStands: true };

/** Each event has an entry of its own, called like it. */
interface Where {
  entryId: string;
  at: FactPlace;
}

/** One scripted event as a crew would have logged it. */
export interface LoggedSeasonEvent {
  itinerary: Itinerary;
  state: WorkState;
}

/** The pads of each corner are a job of their own: a lasting repair speaks of all a job had left as temporary. */
export function seasonCard(cardId: string, position: string | null): string {
  return position === null ? cardId : `${cardId} ${position}`;
}

/** The questions of the season, asked of those jobs. */
export function seasonQuestions(parts: readonly PartQuestion[]): PartQuestion[] {
  return parts.flatMap((part) => {
    const places = part.positions.length > 0 ? part.positions : [null];
    return places.map((position) => ({
      ...part,
      cardId: seasonCard(part.cardId, position),
      positions: position === null ? [] : [position],
    }));
  });
}

/**
 * Plays a scripted event into a log by the actions a phone makes, decided and applied as everywhere. The route has the
 * script's points: a service, then two stages and a service again; behind a car that never finished lies one stage more.
 *
 * @param repairs by job, the task that left a temporary repair last: one may be made good at a later event
 */
export function logEvent(
  event: WatchedEvent,
  parts: readonly PartQuestion[],
  repairs: Map<string, string>,
): LoggedSeasonEvent {
  const { itinerary, placeOf } = layRoute(event);
  const draft = draftOf(emptyState);
  let seq = 0;
  const { eventId: entryId } = event;
  function act(body: ActionBody): void {
    const stamp = { deviceId: 'phone', deviceSeq: seq + 1, deviceTime: seq, version: ACTION_VERSION };
    const outcome = decide(draft, { ...body, ...stamp, actionId: `a${seq}`, by: 'mia' }, MIA, RULES);
    if (outcome.status === 'refused') throw new Error(`The season was refused: ${outcome.refusal.code}`);
    const entries = numberEntries(outcome.entries, seq + 1, seq);
    for (const entry of entries) applyInPlace(draft, entry);
    seq += entries.length;
  }
  const { stageMetres = [] } = event.counted;
  for (const [point, metres] of stageMetres.entries()) {
    const at = placeOf(point);
    if (at.kind !== 'road' || at.afterStageId === null || metres === stageMetres[point - 1]) continue;
    act({
      kind: 'confirmStage',
      args: { entryId, stageId: at.afterStageId, driven: true, conditions: {} },
    });
  }
  for (const record of event.records.toSorted((one, other) => one.point - other.point)) {
    for (const body of bodiesOf(record, { entryId, at: placeOf(record.point) }, parts, repairs)) act(body);
  }
  return { itinerary, state: draft };
}

function bodiesOf(
  record: PartRecord,
  where: Where,
  parts: readonly PartQuestion[],
  repairs: Map<string, string>,
): ActionBody[] {
  const { entryId, at } = where;
  const fact = (said: CarFact): ActionBody[] => [
    {
      kind: 'recordFact',
      args: { factId: `${said.kind} ${JSON.stringify([record, at])}`, entryId, at, fact: said },
    },
  ];
  switch (record.kind) {
    case 'out':
      return fact({ kind: 'out', forDay: false, cause: 'offRoad', cardId: null, words: '' });
    case 'restarted':
      return fact({ kind: 'restarted', words: '' });
    case 'closed':
      return closeAll(record, where, parts, repairs);
    default: {
      const cardId = seasonCard(record.cardId, record.position);
      const { position } = record;
      const said = { cardId, position, words: '' };
      if (record.kind === 'fitted') return fact({ kind: 'fitted', ...said });
      if (record.kind === 'modified') return fact({ kind: 'fitted', ...said, otherKind: true });
      if (record.kind === 'broke') {
        return fact({ kind: 'incident', code: 'hardLanding', place: null, words: '', brokenCardId: cardId });
      }
      const of = repairs.get(cardId);
      // What broke on the road left no task behind that could be made good: its job is done instead.
      return of === undefined ? [close(where, cardId, [])] : fact({ kind: 'madeGood', of, words: '' });
    }
  }
}

function closeAll(
  { cardId, findings }: Extract<PartRecord, { kind: 'closed' }>,
  where: Where,
  parts: readonly PartQuestion[],
  repairs: Map<string, string>,
): ActionBody[] {
  const places = parts.find((part) => part.cardId === cardId)?.positions ?? [];
  return (places.length > 0 ? places : [null]).map((place) => {
    const own = findings.filter(({ position }) => position === place);
    const card = seasonCard(cardId, place);
    const body = close(where, card, own);
    if (own.some(({ grade }) => grade === 'temporaryRepair')) repairs.set(card, taskIdOf(body.args.task));
    return body;
  });
}

type Findings = Extract<PartRecord, { kind: 'closed' }>['findings'];

function close({ entryId, at }: Where, cardId: string, findings: Findings) {
  if (at.kind !== 'service') throw new Error('In the season cards are closed at services only.');
  const task = { entryId, serviceId: at.serviceId, source: { kind: 'card' as const, cardId } };
  const found = findings.map((finding) => ({ ...finding, lookId: null, words: '' }));
  return { kind: 'closeTask' as const, args: { task, findings: found, readings: [] } };
}

const WHERE = { leg: 1, section: 1, firstCarAt: 0 };

function layRoute({ counted: { stageMetres = [] }, finished }: WatchedEvent) {
  const points: Point[] = [];
  const places: FactPlace[] = [];
  for (const [index, metres] of stageMetres.entries()) {
    if (index % 3 === 0) {
      const serviceId = String.fromCharCode(65 + index / 3);
      points.push(control(`in ${serviceId}`, 'serviceIn'), control(`out ${serviceId}`, 'serviceOut'));
      places.push({ kind: 'service', serviceId });
    } else {
      addStage(points, `SS${index}`, metres - (stageMetres[index - 1] ?? 0));
      places.push({ kind: 'road', afterStageId: `SS${index}` });
    }
  }
  if (!finished) addStage(points, 'SS99', 0);
  const itinerary: Itinerary = { timeZone: 'UTC', roadTimedFrom: 'stageStart', startBlocks: [], points };
  return { itinerary, placeOf: (point: number) => places[point] ?? { kind: 'road', afterStageId: null } };
}

/** A stage the car did not drive has a length all the same. */
const UNDRIVEN_METRES = 7_000;

function addStage(points: Point[], id: string, driven: number): void {
  const run = { stageMetres: driven || UNDRIVEN_METRES, gapSeconds: 180, repeatOf: null };
  points.push({ kind: 'stage', id, name: id, ...run, ...WHERE }, control(`after ${id}`, 'timeControl'));
}

function control(id: string, role: 'serviceIn' | 'serviceOut' | 'timeControl'): Point {
  return { kind: 'control', id, name: id, roles: [role], roadMetres: 0, allowedSeconds: null, ...WHERE };
}
