import { createHash, randomBytes } from 'node:crypto';
import type { TeamRole } from '@halfshaft/contract';
import { type HeldInvite, type TeamTx, withInvite } from '@halfshaft/store';
import { toDate } from '../../clock';

export { findEventName } from '../event/data';
export { createMember, findTeamName } from '../team/data';
export { withInvite };

/** 192 bits: not to be guessed. */
const TOKEN_BYTES = 24;

export function makeToken(): string {
  return randomBytes(TOKEN_BYTES).toString('base64url');
}

/** Only this is kept. A plain hash is enough, since the token is random and long. */
export function hashToken(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}

export interface InviteRow {
  inviteId: string;
  role: 'manager' | 'mechanic' | 'driver';
  eventId: string | null;
  madeBy: string;
  expiresAt: number;
  revokedAt: number | null;
}

export async function createInviteRow(
  tx: TeamTx,
  invite: Omit<InviteRow, 'revokedAt'> & { tokenHash: string; madeAt: number },
): Promise<void> {
  const { inviteId, tokenHash, role, eventId, madeBy, madeAt, expiresAt } = invite;
  await tx.db.invite.create({
    data: {
      teamId: tx.teamId,
      id: inviteId,
      tokenHash,
      role,
      eventId,
      madeBy,
      madeAt: toDate(madeAt),
      expiresAt: toDate(expiresAt),
    },
  });
}

export async function listInviteRows(tx: TeamTx): Promise<InviteRow[]> {
  const rows = await tx.db.invite.findMany({ where: { teamId: tx.teamId }, orderBy: { madeAt: 'desc' } });
  return rows.map((row) => ({
    inviteId: row.id,
    role: row.role as InviteRow['role'],
    eventId: row.eventId,
    madeBy: row.madeBy,
    expiresAt: row.expiresAt.getTime(),
    revokedAt: row.revokedAt?.getTime() ?? null,
  }));
}

/** False when the team has no such invitation. */
export async function revokeInviteRow(tx: TeamTx, inviteId: string, now: number): Promise<boolean> {
  const { count } = await tx.db.invite.updateMany({
    where: { teamId: tx.teamId, id: inviteId },
    data: { revokedAt: toDate(now) },
  });
  return count > 0;
}

export interface Standing {
  personId: string;
  role: TeamRole;
  eventId: string | null;
  membershipId: string;
  revokedAt: Date | null;
}

export async function findStanding(tx: TeamTx, userId: string): Promise<Standing | null> {
  const row = await tx.db.membership.findUnique({ where: { teamId_userId: { teamId: tx.teamId, userId } } });
  if (!row) return null;
  const { personId, role, eventId, id, revokedAt } = row;
  return { personId, role: role as TeamRole, eventId, membershipId: id, revokedAt };
}

export type { HeldInvite };
