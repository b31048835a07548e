import { finding } from '@halfshaft/contract';
import * as z from '@/lib/zod';

/** What has been entered for a task that is not closed yet. */
export const closeDraft = z.object({
  /** By `slotKey`, as typed. */
  typed: z.record(z.string(), z.string()),
  findings: z.array(finding),
});
export type CloseDraft = z.infer<typeof closeDraft>;

export const EMPTY_DRAFT: CloseDraft = { typed: {}, findings: [] };
