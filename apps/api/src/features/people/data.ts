import type { TeamPerson, TeamRole } from '@halfshaft/contract';
import { asUser, type Store, type TeamTx, withTeam } from '@halfshaft/store';

export { createPersonRow } from '../team/data';

export async function listPeople(tx: TeamTx): Promise<TeamPerson[]> {
  const rows = await tx.db.person.findMany({
    where: { teamId: tx.teamId },
    include: { memberships: true },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  });
  return rows.map(({ id, name, initials, memberships }) => ({
    personId: id,
    name,
    initials,
    membership: memberships[0] ? toMembership(memberships[0]) : null,
  }));
}

function toMembership(row: { id: string; role: string; eventId: string | null; revokedAt: Date | null }) {
  const { id, role, eventId, revokedAt } = row;
  return { membershipId: id, role: role as TeamRole, eventId, revokedAt: revokedAt?.getTime() ?? null };
}

export interface MembershipRow {
  membershipId: string;
  role: TeamRole;
  eventId: string | null;
  revokedAt: number | null;
}

export async function findMembership(tx: TeamTx, membershipId: string): Promise<MembershipRow | null> {
  const row = await tx.db.membership.findUnique({
    where: { teamId_id: { teamId: tx.teamId, id: membershipId } },
  });
  return row && toMembership(row);
}

/**
 * How many admins the team has, locked until the transaction ends: two admins who take each other's role away at the same
 * moment must not both find that one is left. A helper of one event is no admin of the team, whatever the role.
 */
export async function countAdmins(tx: TeamTx): Promise<number> {
  const rows = await tx.db.$queryRaw<unknown[]>`
    SELECT id FROM membership
    WHERE team_id = ${tx.teamId}::uuid AND role = 'admin' AND event_id IS NULL AND revoked_at IS NULL
    ORDER BY id FOR UPDATE`;
  return rows.length;
}

export async function updateMembership(
  tx: TeamTx,
  membershipId: string,
  change: { role: TeamRole } | { revokedAt: Date },
): Promise<void> {
  await tx.db.membership.update({
    where: { teamId_id: { teamId: tx.teamId, id: membershipId } },
    data: change,
  });
}

/** The teams an account belongs to, revoked memberships included. */
export function listTeamIds(store: Store, userId: string): Promise<string[]> {
  return asUser(store, userId, async (tx) => {
    const rows = await tx.db.membership.findMany({ where: { userId } });
    return rows.map((row) => row.teamId);
  });
}

/** Hands a membership to another account, unless that one belongs to the team already. */
export function handOverMembership(store: Store, teamId: string, from: string, to: string): Promise<void> {
  return withTeam(
    store,
    { teamId, userId: from },
    async (tx) => {
      const taken = await tx.db.membership.count({ where: { teamId, userId: to } });
      if (taken > 0) return;
      await tx.db.membership.updateMany({ where: { teamId, userId: from }, data: { userId: to } });
    },
    { letRevoked: true },
  );
}
