import type { EntryBody } from '../entry';
import type { Task } from '../model';
import type { Refusal } from '../refusal';
import { type Ruling, refuse, type TaskClaim } from './ruling';

/**
 * Taking and starting. Starting what nobody holds takes it first, so that every holder came by one `claimed` entry:
 * of many at once exactly one gets it.
 */
export function ruleOnTakeTask(claim: TaskClaim, kind: 'takeTask' | 'startTask'): Ruling {
  const { task, rules, doer } = claim;
  const closed = refusalOfClosed(task);
  if (closed) return refuse(closed);
  if (task.holder !== null && task.holder !== doer.personId) {
    return refuse({ code: 'heldByAnother', personId: task.holder });
  }
  const alreadySo = kind === 'takeTask' ? task.holder !== null : task.state === 'underWay';
  if (alreadySo) return refuse({ code: 'alreadyYours' });
  const { needsSignature } = rules;
  const claimed: EntryBody = { kind: 'claimed', task: task.ref, needsSignature };
  const started: EntryBody = { kind: 'started', task: task.ref, needsSignature };
  if (kind === 'takeTask') return { entries: [{ body: claimed }] };
  return { entries: task.holder === null ? [{ body: claimed }, { body: started }] : [{ body: started }] };
}

/** Why nobody can take, start, carry over or drop a task that is closed; null while it is not. */
export function refusalOfClosed(task: Task): Refusal | null {
  if (task.doneBy !== null) return { code: 'alreadyDone', personId: task.doneBy };
  if (task.state === 'carriedOver' || task.state === 'notNeeded')
    return { code: 'notOpen', state: task.state };
  return null;
}
