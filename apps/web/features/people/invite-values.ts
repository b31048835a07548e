import { createInviteInput } from '@halfshaft/contract';
import type { z } from 'zod';

/** As chosen and typed. */
export interface InviteValues {
  role: string;
  /** `team`, or the id of an event; empty until chosen. */
  scope: string;
  days: string;
}

export type InviteInput = z.infer<typeof createInviteInput>;

export type ReadInvite =
  | { ok: true; input: InviteInput }
  | { ok: false; problems: Partial<Record<keyof InviteValues, string>> };

export const WHOLE_TEAM = 'team';

/** What is sent, or what is wrong with each field. */
export function readInvite(teamId: string, { role, scope, days }: InviteValues): ReadInvite {
  if (scope === '') return { ok: false, problems: { scope: 'Choose what the invitation is for.' } };
  const read = createInviteInput.safeParse({
    teamId,
    role,
    eventId: scope === WHOLE_TEAM ? null : scope,
    days: days.trim() === '' ? Number.NaN : Number(days),
  });
  if (read.success) return { ok: true, input: read.data };
  const problems: Partial<Record<keyof InviteValues, string>> = {};
  for (const issue of read.error.issues) {
    const field = issue.path[0] === 'days' ? 'days' : issue.path[0] === 'eventId' ? 'scope' : 'role';
    problems[field] ??= issue.message;
  }
  return { ok: false, problems };
}
