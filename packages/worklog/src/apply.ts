import { addToRecord } from './add-to-record';
import { applyToTask, type TaskEntryBody } from './apply-to-task';
import type { RecordedFact } from './car-fact';
import type { LogEntry } from './entry';
import type { ControlTime, Snag, StageConfirmation, Task } from './model';
import { stageKeyOf } from './stage-key-of';
import type { ActionRecord, StageKey, TimeKey, WorkState } from './state';
import { taskOf } from './task-of';
import { timeKeyOf, timeRefOf } from './time-key-of';

/** A state of one's own, to be changed entry by entry: for long runs in which each action is decided on those before it. */
export interface WorkDraft extends WorkState {
  tasks: Map<string, Task>;
  snags: Map<string, Snag>;
  stages: Map<StageKey, StageConfirmation>;
  times: Map<TimeKey, ControlTime>;
  facts: Map<string, RecordedFact>;
  actions: Map<string, ActionRecord>;
}

/**
 * The state after one more entry. The same reducer serves the phone, the server's projection and a rebuild. It never
 * refuses and never throws: whether an entry may exist was decided before it was written.
 *
 * @example
 * apply(emptyState, claimedByMia).tasks.get(taskId)?.holder // 'mia'
 */
export function apply(state: WorkState, entry: LogEntry): WorkState {
  return applyAll(state, [entry]);
}

/** The state after several more entries, in the order of their `seq`. Copies the state once, not once an entry. */
export function applyAll(state: WorkState, entries: Iterable<LogEntry>): WorkState {
  const draft = draftOf(state);
  for (const entry of entries) applyInPlace(draft, entry);
  return draft;
}

/**
 * A copy that `applyInPlace` may change; the state it was made of stays as it is.
 *
 * @example
 * const draft = draftOf(emptyState);
 * applyInPlace(draft, claimedByMia); // draft.tasks has it, emptyState.tasks has not
 */
export function draftOf(state: WorkState): WorkDraft {
  return {
    tasks: new Map(state.tasks),
    snags: new Map(state.snags),
    stages: new Map(state.stages),
    times: new Map(state.times),
    facts: new Map(state.facts),
    actions: new Map(state.actions),
  };
}

/** As `apply`, but changes the draft instead of making a new state. Rows that were read from it before stay as they are. */
export function applyInPlace(draft: WorkDraft, entry: LogEntry): void {
  const { body } = entry;
  if (body.kind === 'snagRaised') applySnagRaised(draft, entry, body);
  else if (body.kind === 'stageConfirmed') applyStageConfirmed(draft, entry, body);
  else if (body.kind === 'timeRecorded') applyTimeRecorded(draft, entry, body);
  else if (body.kind === 'factRecorded') applyFactRecorded(draft, entry, body);
  else if (body.kind === 'undone') applyUndone(draft, entry, body);
  else applyAboutTask(draft, entry, body);
}

function applyAboutTask(draft: WorkDraft, entry: LogEntry, body: TaskEntryBody): void {
  const before = taskOf(draft, body.task, 'needsSignature' in body ? body : null);
  const task = { ...applyToTask(before, entry.by, body), ...changedBy(entry) };
  draft.tasks.set(task.id, task);
  markSnagOf(draft, task, entry);
  draft.actions.set(entry.actionId, addToRecord(draft.actions.get(entry.actionId), entry, { task: before }));
}

function applySnagRaised(draft: WorkDraft, entry: LogEntry, body: BodyOf<'snagRaised'>): void {
  const { kind: _, snagId: id, ...said } = body;
  const before = draft.snags.get(id) ?? null;
  const fresh = { ...said, id, raisedBy: entry.by, withdrawn: false, ...changedBy(entry) };
  draft.snags.set(id, before && !before.withdrawn ? raisedAgain(before, fresh) : fresh);
  const part = { snag: { snagId: id, before } };
  draft.actions.set(entry.actionId, addToRecord(draft.actions.get(entry.actionId), entry, part));
}

/** The first raiser and place stay; words that are new are added, since a fact is never lost. */
function raisedAgain(first: Snag, again: Snag): Snag {
  const known = first.words.split('\n').includes(again.words);
  return {
    ...first,
    words: known ? first.words : `${first.words}\n${again.words}`,
    urgent: first.urgent || again.urgent,
    ...((first.stop ?? again.stop) ? { stop: true as const } : {}),
    changedSeq: again.changedSeq,
    changedBy: again.changedBy,
  };
}

function applyStageConfirmed(draft: WorkDraft, entry: LogEntry, body: BodyOf<'stageConfirmed'>): void {
  const { kind: _, ...said } = body;
  const key = stageKeyOf(said);
  const before = draft.stages.get(key) ?? null;
  draft.stages.set(key, { ...said, confirmedBy: entry.by, ...changedBy(entry) });
  const part = { stage: { entryId: said.entryId, stageId: said.stageId, before } };
  draft.actions.set(entry.actionId, addToRecord(draft.actions.get(entry.actionId), entry, part));
}

/** Said again, the last one counts: a misread time card is put right by writing it once more. */
function applyTimeRecorded(draft: WorkDraft, entry: LogEntry, body: BodyOf<'timeRecorded'>): void {
  const { kind: _, ...said } = body;
  const key = timeKeyOf(said);
  const before = draft.times.get(key) ?? null;
  draft.times.set(key, { ...said, recordedBy: entry.by, ...changedBy(entry) });
  const part = { time: { ...timeRefOf(said), before } };
  draft.actions.set(entry.actionId, addToRecord(draft.actions.get(entry.actionId), entry, part));
}

/** Under an id that is taken the first one stands; that it was said again keeps the first from being undone unseen. */
function applyFactRecorded(draft: WorkDraft, entry: LogEntry, body: BodyOf<'factRecorded'>): void {
  const { kind: _, ...said } = body;
  const before = draft.facts.get(said.factId) ?? null;
  const stands = before && !before.withdrawn ? before : { ...said, recordedBy: entry.by, withdrawn: false };
  draft.facts.set(said.factId, { ...stands, ...changedBy(entry) });
  const part = { fact: { factId: said.factId, before } };
  draft.actions.set(entry.actionId, addToRecord(draft.actions.get(entry.actionId), entry, part));
}

function applyUndone(draft: WorkDraft, entry: LogEntry, body: BodyOf<'undone'>): void {
  for (const before of body.tasks) {
    const task = { ...before, ...changedBy(entry) };
    draft.tasks.set(task.id, task);
    markSnagOf(draft, task, entry);
  }
  for (const snag of body.snags) draft.snags.set(snag.id, { ...snag, ...changedBy(entry) });
  for (const { before, ...ref } of body.stages) {
    if (before) draft.stages.set(stageKeyOf(ref), { ...before, ...changedBy(entry) });
    else draft.stages.delete(stageKeyOf(ref));
  }
  for (const { before, ...ref } of body.times ?? []) {
    if (before) draft.times.set(timeKeyOf(ref), { ...before, ...changedBy(entry) });
    else draft.times.delete(timeKeyOf(ref));
  }
  for (const fact of body.facts ?? []) draft.facts.set(fact.factId, { ...fact, ...changedBy(entry) });
  const undone = draft.actions.get(body.actionId);
  if (undone) draft.actions.set(undone.actionId, { ...undone, undone: true });
  draft.actions.set(entry.actionId, addToRecord(draft.actions.get(entry.actionId), entry, {}));
}

/** Work on a snag's repair changes the snag too: raising it can then no longer be undone behind someone's back. */
function markSnagOf(draft: WorkDraft, task: Task, entry: LogEntry): void {
  if (task.ref.source.kind !== 'snag') return;
  const snag = draft.snags.get(task.ref.source.snagId);
  if (snag) draft.snags.set(snag.id, { ...snag, ...changedBy(entry) });
}

function changedBy(entry: LogEntry): { changedSeq: number; changedBy: string } {
  return { changedSeq: entry.seq, changedBy: entry.by };
}

type BodyOf<K extends LogEntry['body']['kind']> = Extract<LogEntry['body'], { kind: K }>;
