import { finding } from '@halfshaft/contract';
import type { TaskId } from '@halfshaft/worklog';
import { z } from 'zod';
import { KEPT_FORMS } from '@/lib/keep-typed';
import { readDraft } from './use-draft';

/** What has been entered for a task that is not closed yet. */
export const closeDraft = z.object({
  /** By `slotKey`, as typed. */
  typed: z.record(z.string(), z.string()),
  findings: z.array(finding),
});
export type CloseDraft = z.infer<typeof closeDraft>;

export const EMPTY_DRAFT: CloseDraft = { typed: {}, findings: [] };

export const closeDraftKey = (taskId: TaskId) => `close.${taskId}`;

/** True when a sheet was begun and left. */
export function isBegun(taskId: TaskId): boolean {
  const draft = readDraft(KEPT_FORMS + closeDraftKey(taskId), closeDraft);
  if (!draft) return false;
  return draft.findings.length > 0 || Object.values(draft.typed).some((text) => text !== '');
}
