import type { LogEntry } from './entry';
import type { Task } from './model';
import type { ActionRecord } from './state';

interface TouchedPart {
  task?: Task;
  snag?: Omit<ActionRecord['snags'][number], 'seq'>;
  stage?: Omit<ActionRecord['stages'][number], 'seq'>;
  time?: Omit<NonNullable<ActionRecord['times']>[number], 'seq'>;
  fact?: Omit<NonNullable<ActionRecord['facts']>[number], 'seq'>;
}

/** What is remembered of an action after one more of its entries, which touched `part` (as it stood before). */
export function addToRecord(
  record: ActionRecord | undefined,
  entry: LogEntry,
  part: TouchedPart,
): ActionRecord {
  const { seq, actionId, by, enteredBy } = entry;
  const start = record ?? newRecord(actionId, by, enteredBy);
  return {
    ...start,
    seq,
    kinds: [...start.kinds, entry.body.kind],
    tasks: part.task ? withTask(start.tasks, part.task, seq) : start.tasks,
    snags: part.snag ? [...start.snags, { ...part.snag, seq }] : start.snags,
    stages: part.stage ? [...start.stages, { ...part.stage, seq }] : start.stages,
    times: part.time ? [...(start.times ?? []), { ...part.time, seq }] : (start.times ?? []),
    facts: part.fact ? [...(start.facts ?? []), { ...part.fact, seq }] : (start.facts ?? []),
  };
}

/** A task touched twice by one action (taken and started) keeps how it stood before the first touch. */
function withTask(tasks: ActionRecord['tasks'], before: Task, seq: number): ActionRecord['tasks'] {
  if (!tasks.some((touched) => touched.before.id === before.id)) return [...tasks, { before, seq }];
  return tasks.map((touched) => (touched.before.id === before.id ? { ...touched, seq } : touched));
}

function newRecord(actionId: string, by: string, enteredBy: string): ActionRecord {
  return {
    actionId,
    by,
    enteredBy,
    kinds: [],
    seq: 0,
    tasks: [],
    snags: [],
    stages: [],
    times: [],
    facts: [],
    undone: false,
  };
}
