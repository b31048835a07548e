import type { EntryBody } from './entry';
import type { PersonId, Task } from './model';

/** Entries about one task. */
export type TaskEntryBody = Extract<EntryBody, { task: unknown }>;

/** The task after one entry about it; `changedSeq` and `changedBy` are left to the caller. */
export function applyToTask(task: Task, by: PersonId, body: TaskEntryBody): Task {
  switch (body.kind) {
    case 'claimed':
      return { ...task, state: 'claimed', holder: by, needsSignature: body.needsSignature };
    case 'released':
      return { ...task, state: 'open', holder: null };
    case 'started':
      return { ...task, state: 'underWay', holder: by, needsSignature: body.needsSignature };
    case 'done':
      return applyDone(task, by, body);
    case 'carriedOver':
    case 'dropped':
      return {
        ...task,
        state: body.kind === 'dropped' ? 'notNeeded' : 'carriedOver',
        holder: null,
        needsSignature: body.needsSignature,
        reason: body.reason,
      };
    case 'reopened':
      return {
        ...task,
        state: 'open',
        holder: null,
        doneBy: null,
        alsoDoneBy: [],
        signedBy: null,
        reason: body.reason === '' ? null : body.reason,
        round: task.round + 1,
      };
    case 'signed':
      return { ...task, signedBy: by, needsSignature: true };
  }
}

function applyDone(task: Task, by: PersonId, body: Extract<EntryBody, { kind: 'done' }>): Task {
  const said = {
    findings: [...task.findings, ...body.findings],
    readings: [...task.readings, ...body.readings],
  };
  if (task.state !== 'done' || task.doneBy === null) {
    const closed = { state: 'done', holder: null, doneBy: by, reason: null } as const;
    return { ...task, ...said, ...closed, needsSignature: body.needsSignature };
  }
  const known = task.doneBy === by || task.alsoDoneBy.includes(by);
  return {
    ...task,
    ...said,
    alsoDoneBy: known ? task.alsoDoneBy : [...task.alsoDoneBy, by],
    // Whoever turns out to have done the work cannot be the second pair of eyes: their signature falls.
    signedBy: task.signedBy === by ? null : task.signedBy,
  };
}
