import { createHash } from 'node:crypto';
import type { PushResult } from '@halfshaft/contract';
import type { Itinerary } from '@halfshaft/itinerary';
import type { JobCard } from '@halfshaft/lifing';
import {
  appendEntries,
  lockLog,
  type MemberTx,
  type Store,
  type TeamTx,
  withMembers,
  withTeam,
} from '@halfshaft/store';
import type {
  ActionRecord,
  CarOfCards,
  ControlTime,
  LogEntry,
  RecordedFact,
  Scope,
  Snag,
  StageConfirmation,
  Task,
  WorkChanges,
  WorkState,
} from '@halfshaft/worklog';
import { stageKeyOf, timeKeyOf } from '@halfshaft/worklog';
import { toDate } from '../../clock';

export { findEventName } from '../event/data';
export { lockLog, withMembers as forMembers };

/** How many entries one pull carries. */
export const PULL_PAGE = 500;

/**
 * One transaction for a few pushed actions. A revoked member is let in: facts recorded before the revocation still count,
 * and `decide` looks at when it was.
 */
export function inTeam<T>(
  store: Store,
  claim: { teamId: string; userId: string },
  work: (tx: MemberTx) => Promise<T>,
): Promise<T> {
  return withTeam(store, claim, work, { letRevoked: true });
}

export async function readLastSeq(tx: TeamTx, eventId: string): Promise<number> {
  const row = await tx.db.logHead.findUnique({ where: { teamId_eventId: { teamId: tx.teamId, eventId } } });
  return row?.lastSeq ?? 0;
}

export async function listLogEntries(
  tx: TeamTx,
  eventId: string,
  since: number,
  most = PULL_PAGE,
): Promise<LogEntry[]> {
  const rows = await tx.db.logEntry.findMany({
    where: { teamId: tx.teamId, eventId, seq: { gt: since } },
    orderBy: { seq: 'asc' },
    take: most,
  });
  return rows.map((row) => ({
    seq: row.seq,
    actionId: row.actionId,
    by: row.byPerson,
    enteredBy: row.enteredBy,
    deviceId: row.deviceId,
    deviceTime: Number(row.deviceTime),
    serverTime: Number(row.serverTime),
    flags: row.flags as unknown as LogEntry['flags'],
    body: row.body as unknown as LogEntry['body'],
  }));
}

export async function listTasks(tx: TeamTx, eventId: string): Promise<Task[]> {
  const rows = await tx.db.task.findMany({ where: { teamId: tx.teamId, eventId }, orderBy: { id: 'asc' } });
  return rows.map((row) => row.body as unknown as Task);
}

export async function listStages(tx: TeamTx, eventId: string): Promise<StageConfirmation[]> {
  const rows = await tx.db.stageRun.findMany({
    where: { teamId: tx.teamId, eventId },
    orderBy: { id: 'asc' },
  });
  return rows.map((row) => row.body as unknown as StageConfirmation);
}

export async function listFacts(tx: TeamTx, eventId: string): Promise<RecordedFact[]> {
  const rows = await tx.db.carFact.findMany({
    where: { teamId: tx.teamId, eventId },
    orderBy: { id: 'asc' },
  });
  return rows.map((row) => row.body as unknown as RecordedFact);
}

/** What was answered to an action that was pushed before. */
export interface StoredAction {
  content: string;
  result: PushResult;
}

/** Ids that pushed actions speak of. */
export interface MentionedIds {
  people: string[];
  entries: string[];
  cards: string[];
  snags: string[];
  facts: string[];
  /** Entries whose cards may open each other again: all cards of a car are read only for these. */
  reopening: string[];
  /** Actions that are to be undone. */
  undone: string[];
}

export type CardRules = Pick<JobCard, 'needsSignature' | 'readings'> & { carId: string };

/** What the team has of the things pushed actions speak of; what is missing is not there, or not theirs. */
export interface Known {
  /** By action id. */
  stored: ReadonlyMap<string, StoredAction>;
  people: ReadonlySet<string>;
  /** By entry of this event: its car. */
  carOf: ReadonlyMap<string, string>;
  cards: ReadonlyMap<string, CardRules>;
  /** By car: the cards that began as one of the starter set, whose triggers say what is to be done again. */
  cars: ReadonlyMap<string, CarOfCards>;
  /** Snags that belong to another event of the team. */
  snagsElsewhere: ReadonlySet<string>;
  /** Facts of the car that belong to another event of the team. */
  factsElsewhere: ReadonlySet<string>;
  records: ReadonlyMap<string, ActionRecord>;
  itinerary: Itinerary | null;
}

/** A JSON object with ids as keys, or null when there is nothing. */
type ById<V> = Record<string, V> | null;

/** In one statement: a push is a handful of round trips, however many things its actions speak of. */
export async function loadKnown(
  { db, teamId }: TeamTx,
  eventId: string,
  ids: MentionedIds & { actions: string[] },
): Promise<Known> {
  const [row] = await db.$queryRaw<
    {
      stored: ById<StoredAction>;
      people: string[] | null;
      cars: ById<string>;
      cards: ById<CardRules>;
      starters: ById<CarOfCards>;
      elsewhere: string[] | null;
      facts: string[] | null;
      records: ById<ActionRecord>;
      itinerary: Itinerary | null;
    }[]
  >`SELECT
    (SELECT jsonb_object_agg(id, jsonb_build_object('content', content, 'result', outcome)) FROM action
      WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.actions}::uuid[])) AS stored,
    (SELECT jsonb_agg(id) FROM person
      WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.people}::uuid[])) AS people,
    (SELECT jsonb_object_agg(id, car_id) FROM entry
      WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.entries}::uuid[]) AND event_id = ${eventId}::uuid) AS cars,
    (SELECT jsonb_object_agg(id, jsonb_build_object('carId', car_id, 'readings', body->'readings',
        'needsSignature', body->'needsSignature')) FROM card
      WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.cards}::uuid[])) AS cards,
    (SELECT jsonb_object_agg(car.id, jsonb_build_object('cards',
        (SELECT coalesce(jsonb_agg(jsonb_build_object('id', card.id, 'starterId', card.body->'starterId')
            ORDER BY card.ordinal), '[]') FROM card
          WHERE card.team_id = ${teamId}::uuid AND card.car_id = car.id AND card.body->>'starterId' IS NOT NULL
            AND (card.removed_at IS NULL OR card.id = ANY(${ids.cards}::uuid[]))))) FROM car
      WHERE car.team_id = ${teamId}::uuid AND car.id IN (SELECT car_id FROM entry
        WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.reopening}::uuid[]) AND event_id = ${eventId}::uuid)) AS starters,
    (SELECT jsonb_agg(id) FROM snag
      WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.snags}::uuid[]) AND event_id <> ${eventId}::uuid) AS elsewhere,
    (SELECT jsonb_agg(id) FROM car_fact
      WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.facts}::uuid[]) AND event_id <> ${eventId}::uuid) AS facts,
    (SELECT jsonb_object_agg(id, body) FROM applied_action
      WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.undone}::uuid[]) AND event_id = ${eventId}::uuid) AS records,
    (SELECT itinerary FROM itinerary_version
      WHERE team_id = ${teamId}::uuid AND event_id = ${eventId}::uuid ORDER BY number DESC LIMIT 1) AS itinerary`;
  return {
    stored: toMap(row?.stored),
    people: new Set(row?.people),
    carOf: toMap(row?.cars),
    cards: toMap(row?.cards),
    cars: toMap(row?.starters),
    snagsElsewhere: new Set(row?.elsewhere),
    factsElsewhere: new Set(row?.facts),
    records: toMap(row?.records),
    itinerary: row?.itinerary ?? null,
  };
}

function toMap<V>(byId: ById<V> | undefined): Map<string, V> {
  return new Map(Object.entries(byId ?? {}));
}

/** The names of these people of the team, by id. */
export async function findNames(tx: TeamTx, personIds: string[]): Promise<Map<string, string>> {
  if (personIds.length === 0) return new Map();
  const where = { teamId: tx.teamId, id: { in: personIds } };
  const rows = await tx.db.person.findMany({ where, select: { id: true, name: true } });
  return new Map(rows.map((row) => [row.id, row.name]));
}

/** The parts of the event's work that `scopeOf` named. */
export async function loadSlice(
  { db, teamId }: TeamTx,
  eventId: string,
  scopes: readonly Scope[],
): Promise<WorkState> {
  const taskIds = scopes.flatMap((scope) => scope.taskIds);
  const snagIds = scopes.flatMap((scope) => scope.snagIds);
  const stageIds = scopes.flatMap((scope) => scope.stages.map(stageKeyOf));
  const timeIds = scopes.flatMap((scope) => scope.times.map(timeKeyOf));
  const factIds = scopes.flatMap((scope) => scope.factIds);
  const actionIds = scopes.flatMap((scope) => scope.actionIds);
  const [row] = await db.$queryRaw<
    {
      tasks: ById<Task>;
      snags: ById<Snag>;
      stages: ById<StageConfirmation>;
      times: ById<ControlTime>;
      facts: ById<RecordedFact>;
      actions: ById<ActionRecord>;
    }[]
  >`SELECT
    (SELECT jsonb_object_agg(id, body) FROM task
      WHERE team_id = ${teamId}::uuid AND id = ANY(${taskIds}::text[]) AND event_id = ${eventId}::uuid) AS tasks,
    (SELECT jsonb_object_agg(id, body) FROM snag
      WHERE team_id = ${teamId}::uuid AND id = ANY(${snagIds}::uuid[]) AND event_id = ${eventId}::uuid) AS snags,
    (SELECT jsonb_object_agg(id, body) FROM stage_run
      WHERE team_id = ${teamId}::uuid AND id = ANY(${stageIds}::text[]) AND event_id = ${eventId}::uuid) AS stages,
    (SELECT jsonb_object_agg(id, body) FROM control_time
      WHERE team_id = ${teamId}::uuid AND id = ANY(${timeIds}::text[]) AND event_id = ${eventId}::uuid) AS times,
    (SELECT jsonb_object_agg(id, body) FROM car_fact
      WHERE team_id = ${teamId}::uuid AND id = ANY(${factIds}::uuid[]) AND event_id = ${eventId}::uuid) AS facts,
    (SELECT jsonb_object_agg(id, body) FROM applied_action
      WHERE team_id = ${teamId}::uuid AND id = ANY(${actionIds}::uuid[]) AND event_id = ${eventId}::uuid) AS actions`;
  return {
    tasks: toMap(row?.tasks),
    snags: toMap(row?.snags),
    stages: toMap(row?.stages),
    times: toMap(row?.times),
    facts: toMap(row?.facts),
    actions: toMap(row?.actions),
  };
}

export interface ActionToStore {
  actionId: string;
  deviceId: string;
  deviceSeq: number;
  content: string;
  result: PushResult;
}

/** Before anything is appended, since the log's entries point at their action. */
export async function storeActions(
  { db, teamId }: TeamTx,
  eventId: string,
  actions: ActionToStore[],
  now: number,
): Promise<void> {
  if (actions.length === 0) return;
  await db.action.createMany({
    data: actions.map(({ actionId, deviceId, deviceSeq, content, result }) => ({
      teamId,
      id: actionId,
      eventId,
      deviceId,
      deviceSeq,
      content,
      outcome: result,
      receivedAt: toDate(now),
    })),
  });
}

/** A short stand-in for an action's content: equal exactly when the content is. */
export function hashContent(contentKey: string): string {
  return createHash('sha256').update(contentKey).digest('hex');
}

/** Appends to the locked log. The entries carry the seqs they must get. */
export async function appendToLog(
  tx: TeamTx,
  eventId: string,
  entries: LogEntry[],
  now: number,
): Promise<void> {
  const [first] = entries;
  if (!first) return;
  const rows = entries.map((entry) => ({ ...entry, kind: entry.body.kind }));
  const taken = await appendEntries(tx, eventId, rows, now);
  if (taken !== first.seq) throw new Error('appendToLog: the log moved although it was locked');
}

/** Writes the rows of the projection that entries changed. Snags first: a task may be the repair of one. */
export async function saveChanges(tx: TeamTx, eventId: string, changes: WorkChanges): Promise<void> {
  if (changes.snags.length > 0) await saveSnags(tx, eventId, changes.snags);
  if (changes.tasks.length > 0) await saveTasks(tx, eventId, changes.tasks);
  if (changes.stages.length > 0) await saveStages(tx, eventId, changes.stages);
  if (changes.removedStages.length > 0) {
    const id = { in: changes.removedStages.map(stageKeyOf) };
    await tx.db.stageRun.deleteMany({ where: { teamId: tx.teamId, eventId, id } });
  }
  if (changes.times.length > 0) await saveTimes(tx, eventId, changes.times);
  if (changes.removedTimes.length > 0) {
    const id = { in: changes.removedTimes.map(timeKeyOf) };
    await tx.db.controlTime.deleteMany({ where: { teamId: tx.teamId, eventId, id } });
  }
  if (changes.facts.length > 0) await saveFacts(tx, eventId, changes.facts);
  if (changes.actions.length > 0) await saveRecords(tx, eventId, changes.actions);
}

// One statement for all rows of a kind; the columns are read out of the body, so that they cannot differ from it.

async function saveSnags({ db, teamId }: TeamTx, eventId: string, snags: Snag[]): Promise<void> {
  await db.$executeRaw`
    INSERT INTO snag (team_id, id, event_id, entry_id, body)
    SELECT ${teamId}::uuid, (s->>'id')::uuid, ${eventId}::uuid, (s->>'entryId')::uuid, s
    FROM jsonb_array_elements(${JSON.stringify(snags)}::jsonb) s
    ON CONFLICT (team_id, id) DO UPDATE SET body = EXCLUDED.body`;
}

async function saveTasks({ db, teamId }: TeamTx, eventId: string, tasks: Task[]): Promise<void> {
  await db.$executeRaw`
    INSERT INTO task (team_id, id, event_id, entry_id, service_id, card_id, snag_id, state, holder, changed_seq, body)
    SELECT ${teamId}::uuid, t->>'id', ${eventId}::uuid, (t->'ref'->>'entryId')::uuid, t->'ref'->>'serviceId',
      (t->'ref'->'source'->>'cardId')::uuid, (t->'ref'->'source'->>'snagId')::uuid,
      t->>'state', (t->>'holder')::uuid, (t->>'changedSeq')::int, t
    FROM jsonb_array_elements(${JSON.stringify(tasks)}::jsonb) t
    ON CONFLICT (team_id, id) DO UPDATE SET
      state = EXCLUDED.state, holder = EXCLUDED.holder, changed_seq = EXCLUDED.changed_seq, body = EXCLUDED.body`;
}

async function saveStages({ db, teamId }: TeamTx, eventId: string, stages: StageConfirmation[]) {
  const rows = stages.map((body) => ({ id: stageKeyOf(body), body }));
  await db.$executeRaw`
    INSERT INTO stage_run (team_id, id, event_id, entry_id, body)
    SELECT ${teamId}::uuid, s->>'id', ${eventId}::uuid, (s->'body'->>'entryId')::uuid, s->'body'
    FROM jsonb_array_elements(${JSON.stringify(rows)}::jsonb) s
    ON CONFLICT (team_id, id) DO UPDATE SET body = EXCLUDED.body`;
}

async function saveTimes({ db, teamId }: TeamTx, eventId: string, times: ControlTime[]): Promise<void> {
  const rows = times.map((body) => ({ id: timeKeyOf(body), body }));
  await db.$executeRaw`
    INSERT INTO control_time (team_id, id, event_id, entry_id, body)
    SELECT ${teamId}::uuid, t->>'id', ${eventId}::uuid, (t->'body'->>'entryId')::uuid, t->'body'
    FROM jsonb_array_elements(${JSON.stringify(rows)}::jsonb) t
    ON CONFLICT (team_id, id) DO UPDATE SET body = EXCLUDED.body`;
}

/** One that was withdrawn may be recorded again under its id, of another car. */
async function saveFacts({ db, teamId }: TeamTx, eventId: string, facts: RecordedFact[]): Promise<void> {
  await db.$executeRaw`
    INSERT INTO car_fact (team_id, id, event_id, entry_id, body)
    SELECT ${teamId}::uuid, (f->>'factId')::uuid, ${eventId}::uuid, (f->>'entryId')::uuid, f
    FROM jsonb_array_elements(${JSON.stringify(facts)}::jsonb) f
    ON CONFLICT (team_id, id) DO UPDATE SET entry_id = EXCLUDED.entry_id, body = EXCLUDED.body`;
}

async function saveRecords({ db, teamId }: TeamTx, eventId: string, records: ActionRecord[]) {
  await db.$executeRaw`
    INSERT INTO applied_action (team_id, id, event_id, body)
    SELECT ${teamId}::uuid, (r->>'actionId')::uuid, ${eventId}::uuid, r
    FROM jsonb_array_elements(${JSON.stringify(records)}::jsonb) r
    ON CONFLICT (team_id, id) DO UPDATE SET body = EXCLUDED.body`;
}
