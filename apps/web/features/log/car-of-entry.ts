import type { EntryId, LogEntry } from '@halfshaft/worklog';

/** The car an entry is about; null when it took back an action that had changed nothing of a car. */
export function carOfEntry({ body }: LogEntry): EntryId | null {
  switch (body.kind) {
    case 'snagRaised':
    case 'stageConfirmed':
      return body.entryId;
    case 'undone': {
      const [task] = body.tasks;
      return task?.ref.entryId ?? body.snags[0]?.entryId ?? body.stages[0]?.entryId ?? null;
    }
    default:
      return body.task.entryId;
  }
}
