import { splitIds } from './id-parts';
import type { TaskId, TaskRef } from './model';

/**
 * The task an id stands for: the reverse of `taskIdOf`. Throws when the text was not made by `taskIdOf`.
 *
 * @example
 * taskRefOf('e7~B~card~nuts').source // { kind: 'card', cardId: 'nuts' }
 */
export function taskRefOf(id: TaskId): TaskRef {
  const [entryId, serviceId, kind, sourceId, ...rest] = splitIds(id);
  if (entryId !== undefined && serviceId !== undefined && sourceId !== undefined && rest.length === 0) {
    if (kind === 'card') return { entryId, serviceId, source: { kind, cardId: sourceId } };
    if (kind === 'snag') return { entryId, serviceId, source: { kind, snagId: sourceId } };
  }
  throw new Error(`taskRefOf: "${id}" is not a task id made by taskIdOf.`);
}
