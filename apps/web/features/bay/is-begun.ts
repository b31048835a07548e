import type { TaskId } from '@halfshaft/worklog';
import { KEPT_FORMS } from '@/lib/keep-typed';
import { readStored } from '@/lib/storage';

export const closeDraftKey = (taskId: TaskId) => `close.${taskId}`;

/** True when the sheet for closing a task was begun and left. Asked by every card of the list, so without its schema. */
export function isBegun(taskId: TaskId): boolean {
  const stored = readStored(KEPT_FORMS + closeDraftKey(taskId));
  if (typeof stored !== 'object' || stored === null) return false;
  const { findings, typed } = stored as { findings?: unknown; typed?: unknown };
  if (Array.isArray(findings) && findings.length > 0) return true;
  return Object.values(typed ?? {}).some((text) => text !== '');
}
