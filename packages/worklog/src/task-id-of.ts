import { joinIds } from './id-parts';
import type { TaskId, TaskRef } from './model';

/**
 * The id of a piece of work, the same on every device, so that a phone without coverage and the server speak of the
 * same task. `taskRefOf` turns it back.
 *
 * @example
 * taskIdOf({ entryId: 'e7', serviceId: 'B', source: { kind: 'card', cardId: 'nuts' } }) // 'e7~B~card~nuts'
 */
export function taskIdOf(ref: TaskRef): TaskId {
  const { source } = ref;
  const sourceId = source.kind === 'card' ? source.cardId : source.snagId;
  return joinIds([ref.entryId, ref.serviceId, source.kind, sourceId]);
}
