import { randomUUID } from 'node:crypto';
import type { acceptInviteInput, createInviteInput } from '@halfshaft/contract';
import type { HeldInvite, MemberTx, Store } from '@halfshaft/store';
import type { z } from 'zod';
import { AppError, notAllowed, unknown } from '../../errors';
import { mayDecideRoles, mayManage } from '../people/ability';
import {
  createInviteRow,
  createMember,
  findEventName,
  findStanding,
  findTeamName,
  hashToken,
  listInviteRows,
  makeToken,
  revokeInviteRow,
  withInvite,
} from './data';

const MILLISECONDS_PER_DAY = 86_400_000;
const NO_SUCH_LINK = 'This link leads nowhere. Scan the code again, or ask for a new one.';

export async function createInvite(tx: MemberTx, input: z.infer<typeof createInviteInput>, now: number) {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  if (input.role === 'manager' && !mayDecideRoles(tx.member)) throw notAllowed('an admin');
  if (input.eventId && !(await findEventName(tx, input.eventId))) throw unknown();
  const inviteId = randomUUID();
  const token = makeToken();
  const expiresAt = now + input.days * MILLISECONDS_PER_DAY;
  const { role, eventId } = input;
  const madeBy = tx.member.personId;
  await createInviteRow(tx, {
    inviteId,
    tokenHash: hashToken(token),
    role,
    eventId,
    madeBy,
    madeAt: now,
    expiresAt,
  });
  return { inviteId, token, expiresAt };
}

export async function listInvites(tx: MemberTx) {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  return listInviteRows(tx);
}

export async function revokeInvite(tx: MemberTx, inviteId: string, now: number): Promise<void> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  if (!(await revokeInviteRow(tx, inviteId, now))) throw unknown();
}

/** What the holder of a link sees before joining; needs no account. */
export function lookAtInvite(store: Store, token: string, now: number) {
  return withInvite(store, { tokenHash: hashToken(token), userId: null }, async (held) => {
    if (!held) throw new AppError('unknown', NO_SUCH_LINK);
    const { tx, invite } = held;
    return {
      teamName: await findTeamName(tx),
      role: invite.role,
      eventName: invite.eventId ? await findEventName(tx, invite.eventId) : null,
      problem: problemOf(invite, now),
    };
  });
}

/** Joins the team as a new person. An account that already belongs there is only told where it is. */
export function acceptInvite(
  { store, userId, now }: { store: Store; userId: string; now: number },
  input: z.infer<typeof acceptInviteInput>,
) {
  return withInvite(store, { tokenHash: hashToken(input.token), userId }, async (held) => {
    if (!held) throw new AppError('unknown', NO_SUCH_LINK);
    const { tx, invite } = held;
    const standing = await findStanding(tx, userId);
    if (standing?.revokedAt)
      throw new AppError('notAllowed', 'You were taken out of this team. Ask its admin.');
    if (standing) return { teamId: tx.teamId, personId: standing.personId, eventId: standing.eventId };
    const problem = problemOf(invite, now);
    if (problem) throw new AppError('notAllowed', problem);
    const personId = randomUUID();
    const { role, eventId } = invite;
    await createMember(
      tx,
      { personId, membershipId: randomUUID(), userId, name: input.name, role, eventId },
      now,
    );
    return { teamId: tx.teamId, personId, eventId };
  });
}

function problemOf(invite: HeldInvite, now: number): string | null {
  if (invite.revokedAt) return 'This link was taken back. Ask the team for a new one.';
  if (invite.expiresAt.getTime() <= now) return 'This link has run out. Ask the team for a new one.';
  return null;
}
