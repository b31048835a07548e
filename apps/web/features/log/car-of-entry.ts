import type { EntryId, LogEntry } from '@halfshaft/worklog';

/** The car an entry is about; null when it took back an action that had changed nothing of a car. */
export function carOfEntry({ body }: LogEntry): EntryId | null {
  switch (body.kind) {
    case 'snagRaised':
    case 'stageConfirmed':
    case 'timeRecorded':
    case 'factRecorded':
      return body.entryId;
    case 'undone': {
      const [first] = [...body.snags, ...body.stages, ...(body.times ?? []), ...(body.facts ?? [])];
      return body.tasks[0]?.ref.entryId ?? first?.entryId ?? null;
    }
    default:
      return body.task.entryId;
  }
}
