import { createHash } from 'node:crypto';
import type { PushResult } from '@halfshaft/contract';
import { appendEntries, lockLog, type MemberTx, type Store, type TeamTx, withTeam } from '@halfshaft/store';
import type {
  ActionRecord,
  EntryDraft,
  LogEntry,
  Scope,
  Snag,
  StageConfirmation,
  Task,
  WorkChanges,
  WorkState,
} from '@halfshaft/worklog';
import { stageKeyOf } from '@halfshaft/worklog';
import { toDate } from '../../clock';

export { findCard } from '../card/data';
export { findEntry, findEventName, findItinerary } from '../event/data';
export { lockLog };

/** How many entries one pull carries. */
export const PULL_PAGE = 500;

/**
 * One transaction for one pushed action. A revoked member is let in: facts recorded before the revocation still count,
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

export async function listLogEntries(tx: TeamTx, eventId: string, since: number): Promise<LogEntry[]> {
  const rows = await tx.db.logEntry.findMany({
    where: { teamId: tx.teamId, eventId, seq: { gt: since } },
    orderBy: { seq: 'asc' },
    take: PULL_PAGE,
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

/** What was answered to an action that was pushed before. */
export interface StoredAction {
  content: string;
  result: PushResult;
}

export async function findStoredAction(tx: TeamTx, actionId: string): Promise<StoredAction | null> {
  const row = await tx.db.action.findUnique({ where: { teamId_id: { teamId: tx.teamId, id: actionId } } });
  return row && { content: row.content, result: row.outcome as unknown as PushResult };
}

export interface ActionToStore {
  actionId: string;
  eventId: string;
  deviceId: string;
  deviceSeq: number;
  content: string;
  result: PushResult;
}

export async function storeAction(tx: TeamTx, action: ActionToStore, now: number): Promise<void> {
  const { actionId, eventId, deviceId, deviceSeq, content, result } = action;
  await tx.db.action.create({
    data: {
      teamId: tx.teamId,
      id: actionId,
      eventId,
      deviceId,
      deviceSeq,
      content,
      outcome: result,
      receivedAt: toDate(now),
    },
  });
}

/** The name of a person of the team, or null. */
export async function findPersonName(tx: TeamTx, personId: string): Promise<string | null> {
  const row = await tx.db.person.findUnique({ where: { teamId_id: { teamId: tx.teamId, id: personId } } });
  return row?.name ?? null;
}

/** The event a snag belongs to, or null when the team has no such snag. */
export async function findSnagEvent(tx: TeamTx, snagId: string): Promise<string | null> {
  const row = await tx.db.snag.findUnique({ where: { teamId_id: { teamId: tx.teamId, id: snagId } } });
  return row?.eventId ?? null;
}

/** A short stand-in for an action's content: equal exactly when the content is. */
export function hashContent(contentKey: string): string {
  return createHash('sha256').update(contentKey).digest('hex');
}

/** Appends drafts and returns the seq of the first. */
export function appendDrafts(
  tx: TeamTx,
  eventId: string,
  drafts: EntryDraft[],
  now: number,
): Promise<number> {
  const entries = drafts.map((draft) => ({ ...draft, kind: draft.body.kind }));
  return appendEntries(tx, eventId, entries, now);
}

export async function findActionRecord(
  tx: TeamTx,
  eventId: string,
  actionId: string,
): Promise<ActionRecord | null> {
  const row = await tx.db.appliedAction.findUnique({
    where: { teamId_id: { teamId: tx.teamId, id: actionId } },
  });
  return row && row.eventId === eventId ? (row.body as unknown as ActionRecord) : null;
}

/** The part of the event's work that `scopeOf` named. */
export async function loadSlice(tx: TeamTx, eventId: string, scope: Scope): Promise<WorkState> {
  const { db, teamId } = tx;
  const mine = (ids: string[]) => ({ where: { teamId, eventId, id: { in: ids } } });
  const stageIds = scope.stages.map(stageKeyOf);
  const tasks = scope.taskIds.length ? await db.task.findMany(mine(scope.taskIds)) : [];
  const snags = scope.snagIds.length ? await db.snag.findMany(mine(scope.snagIds)) : [];
  const stages = stageIds.length ? await db.stageRun.findMany(mine(stageIds)) : [];
  const actions = scope.actionIds.length ? await db.appliedAction.findMany(mine(scope.actionIds)) : [];
  return {
    tasks: new Map(tasks.map((row) => [row.id, row.body as unknown as Task])),
    snags: new Map(snags.map((row) => [row.id, row.body as unknown as Snag])),
    stages: new Map(stages.map((row) => [row.id, row.body as unknown as StageConfirmation])),
    actions: new Map(actions.map((row) => [row.id, row.body as unknown as ActionRecord])),
  };
}

/** Writes the rows of the projection that an action changed. Snags first: a task may be the repair of one. */
export async function saveChanges(tx: TeamTx, eventId: string, changes: WorkChanges): Promise<void> {
  const { db, teamId } = tx;
  const key = (id: string) => ({ teamId_id: { teamId, id } });
  for (const snag of changes.snags) {
    const body = { ...snag };
    const row = { teamId, id: snag.id, eventId, entryId: snag.entryId, body };
    await db.snag.upsert({ where: key(snag.id), create: row, update: { body } });
  }
  for (const task of changes.tasks) await saveTask(tx, eventId, task);
  for (const stage of changes.stages) {
    const body = stage as object;
    const id = stageKeyOf(stage);
    await db.stageRun.upsert({
      where: key(id),
      create: { teamId, id, eventId, entryId: stage.entryId, body },
      update: { body },
    });
  }
  for (const stage of changes.removedStages) {
    await db.stageRun.deleteMany({ where: { teamId, eventId, id: stageKeyOf(stage) } });
  }
  for (const action of changes.actions) {
    const body = action as object;
    await db.appliedAction.upsert({
      where: key(action.actionId),
      create: { teamId, id: action.actionId, eventId, body },
      update: { body },
    });
  }
}

async function saveTask(tx: TeamTx, eventId: string, task: Task): Promise<void> {
  const { teamId } = tx;
  const { ref, state, holder, changedSeq } = task;
  const changing = { state, holder, changedSeq, body: task as object };
  await tx.db.task.upsert({
    where: { teamId_id: { teamId, id: task.id } },
    create: {
      teamId,
      id: task.id,
      eventId,
      entryId: ref.entryId,
      serviceId: ref.serviceId,
      cardId: ref.source.kind === 'card' ? ref.source.cardId : null,
      snagId: ref.source.kind === 'snag' ? ref.source.snagId : null,
      ...changing,
    },
    update: changing,
  });
}
