import type { LogEntry } from '../entry';
import type { ActionId, EntryId, PersonId, TaskRef } from '../model';
import { stageKeyOf } from '../stage-key-of';
import { taskIdOf } from '../task-id-of';
import { taskRefOf } from '../task-ref-of';
import { timeKeyOf } from '../time-key-of';

/** What the file holds beside its log. */
export interface Carried {
  people: ReadonlySet<PersonId>;
  /** By entry: its car. */
  carOf: ReadonlyMap<EntryId, string>;
  /** By card: its car. */
  carOfCard: ReadonlyMap<string, string>;
}

/**
 * What is wrong with a log that comes from elsewhere, as a sentence, or null: it must have no gap, keep the entries of an
 * action together, and speak only of the people, cars and cards that come with it. Whether each entry has its shape is for
 * the caller to have looked at.
 *
 * @param actions each with its entries, in the order of the log; one without entries was refused
 *
 * @example
 * problemOfCarriedLog([{ actionId, entries: [second] }], carried) // 'Entry 1 of the log is missing.'
 */
export function problemOfCarriedLog(
  actions: readonly { actionId: ActionId; entries: readonly LogEntry[] }[],
  carried: Carried,
): string | null {
  const ids = new Set(actions.map(({ actionId }) => actionId));
  if (ids.size !== actions.length) return 'The log holds one action twice.';
  const snags = new Set<string>();
  let lastSeq = 0;
  for (const entry of actions.flatMap(({ entries }) => entries)) {
    if (entry.seq !== lastSeq + 1) return `Entry ${lastSeq + 1} of the log is missing.`;
    lastSeq = entry.seq;
    if (entry.body.kind === 'snagRaised') snags.add(entry.body.snagId);
    if (!knowsAll(entry, carried, snags)) {
      return `Entry ${entry.seq} of the log speaks of what the file does not hold.`;
    }
  }
  return null;
}

function knowsAll(entry: LogEntry, carried: Carried, snags: ReadonlySet<string>): boolean {
  const people = [entry.by, entry.enteredBy, ...holdersIn(entry)];
  if (!people.every((id) => carried.people.has(id))) return false;
  if (!entriesIn(entry).every((id) => carried.carOf.has(id)) || !isSound(entry)) return false;
  return tasksIn(entry).every(({ entryId, source }) => {
    const carId = carried.carOf.get(entryId);
    if (carId === undefined) return false;
    return source.kind === 'snag' ? snags.has(source.snagId) : carried.carOfCard.get(source.cardId) === carId;
  });
}

/** The people that a row of the projection would point at. */
function holdersIn({ body }: LogEntry): PersonId[] {
  if (body.kind === 'released') return [body.heldBy];
  return body.kind === 'undone' ? body.tasks.flatMap(({ holder }) => holder ?? []) : [];
}

function entriesIn({ body }: LogEntry): EntryId[] {
  if (body.kind !== 'undone') return 'entryId' in body ? [body.entryId] : [];
  const rows = [...body.snags, ...body.stages, ...(body.times ?? []), ...(body.facts ?? [])];
  return rows.map(({ entryId }) => entryId);
}

function tasksIn({ body }: LogEntry): TaskRef[] {
  if (body.kind === 'undone') return body.tasks.map(({ ref }) => ref);
  const tasks = 'task' in body ? [body.task] : [];
  const of = body.kind === 'factRecorded' && 'of' in body.fact ? [taskRefOf(body.fact.of)] : [];
  return [...tasks, ...of];
}

/** What an undo puts back must be of the thing it says it is. */
function isSound({ body }: LogEntry): boolean {
  if (body.kind !== 'undone') return true;
  const { tasks, stages, times = [] } = body;
  return (
    tasks.every(({ id, ref }) => id === taskIdOf(ref)) &&
    stages.every(({ before, ...ref }) => !before || stageKeyOf(before) === stageKeyOf(ref)) &&
    times.every(({ before, ...ref }) => !before || timeKeyOf(before) === timeKeyOf(ref))
  );
}
