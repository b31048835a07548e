import type { EntryReplica } from '@halfshaft/contract';
import type { Finding, LogEntry, PersonId, Snag, Task, TaskId, WorkState } from '@halfshaft/worklog';
import { repairsOf, taskIdOf } from '@halfshaft/worklog';
import { cardTitle } from '../cards/card-title';
import { settledSnags } from '../service/snags-of-car';
import { findingInWords, snagOfFinding } from '../work/task-in-words';

/** A finding that was not OK, with who found it, when and where. */
export interface FoundItem {
  taskId: TaskId;
  title: string;
  /** Of the car plan. */
  place: string;
  words: string;
  grade: Finding['grade'];
  /** A new part went on straight away: nothing is left to do. */
  isChanged: boolean;
  by: PersonId;
  serviceId: string;
  /** Of the device that noted it, in milliseconds. */
  at: number;
}

/** Something that is not settled when the event is over. */
export interface OpenItem {
  title: string;
  place: string;
  words: string;
}

export interface EndOfEvent {
  found: FoundItem[];
  temporary: FoundItem[];
  carriedOver: OpenItem[];
  snags: OpenItem[];
}

/**
 * What one car takes home. A temporary repair stands until it is recorded as made good: a later look without a finding
 * is not enough.
 */
export function endOfEvent(state: WorkState, entries: readonly LogEntry[], entry: EntryReplica): EndOfEvent {
  const found = entries.flatMap((each) => foundIn(state, each, entry));
  const snags = unsettledSnags(state, entry);
  const standing = new Set(repairsOf(state, entry.entryId).map(({ task }) => task.id));
  return {
    found,
    temporary: found.filter(({ grade, taskId }) => grade === 'temporaryRepair' && standing.has(taskId)),
    carriedOver: carriedOver(state, entry),
    snags: snags.map(({ place, words }) => ({ title: 'Snag', place, words })),
  };
}

/** The workshop's list: the same thing once, though it was noted as a finding and raised as a snag. */
export function workshopItems({ temporary, carriedOver, snags, found }: EndOfEvent): OpenItem[] {
  const findings = partsNeeded({ temporary, found });
  const asSnag = (item: OpenItem) =>
    snags.some(({ words }) => words === snagOfFinding(item.words, item.title));
  return [...findings.filter((item) => !asSnag(item)), ...snags, ...carriedOver];
}

/** What parts may have to be ordered for: lasting repairs of what is only patched, and what needs work. */
export function partsNeeded({ temporary, found }: Pick<EndOfEvent, 'temporary' | 'found'>): FoundItem[] {
  return [...temporary, ...found.filter(({ grade, isChanged }) => grade === 'needsWork' && !isChanged)];
}

function foundIn(
  state: WorkState,
  { body, by, actionId, deviceTime }: LogEntry,
  entry: EntryReplica,
): FoundItem[] {
  if (body.kind !== 'done' || body.task.entryId !== entry.entryId) return [];
  if (state.actions.get(actionId)?.undone) return [];
  const card = cardOf(entry, body.task.source);
  const snag = body.task.source.kind === 'snag' ? state.snags.get(body.task.source.snagId) : undefined;
  const title = card ? cardTitle(card) : (snag?.words ?? 'A job no longer on the list');
  const place = card?.place ?? snag?.place ?? 'wholeCar';
  return body.findings
    .filter((finding) => finding.grade !== 'ok')
    .map((finding) => ({
      taskId: taskIdOf(body.task),
      title,
      place,
      words: findingInWords(finding, card?.looks ?? []),
      grade: finding.grade,
      isChanged: finding.newPart === true,
      by,
      serviceId: body.task.serviceId,
      at: deviceTime,
    }));
}

function cardOf(entry: EntryReplica, source: Task['ref']['source']) {
  return source.kind === 'card' ? entry.cards.find((card) => card.id === source.cardId) : undefined;
}

/** Carried over at some service and not done or dropped since. */
function carriedOver(state: WorkState, entry: EntryReplica): OpenItem[] {
  const tasks = [...state.tasks.values()].filter(({ ref }) => ref.entryId === entry.entryId);
  return tasks.flatMap((task) => {
    const card = cardOf(entry, task.ref.source);
    if (task.state !== 'carriedOver' || !card) return [];
    const later = tasks.filter((other) => sameCard(other, task) && other.changedSeq > task.changedSeq);
    if (later.some(({ state: now }) => now !== 'open')) return [];
    return [{ title: cardTitle(card), place: card.place, words: task.reason ?? '' }];
  });
}

function sameCard(one: Task, other: Task): boolean {
  const service = other.ref.serviceId;
  return taskIdOf({ ...one.ref, serviceId: service }) === taskIdOf(other.ref) && one.id !== other.id;
}

function unsettledSnags(state: WorkState, { entryId }: EntryReplica): Snag[] {
  const settled = settledSnags(state);
  return [...state.snags.values()].filter(
    (snag) => snag.entryId === entryId && !snag.withdrawn && !settled.has(snag.id),
  );
}
