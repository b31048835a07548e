import type { TeamPerson, TeamRole } from '@halfshaft/contract';
import type { TeamTx } from '@halfshaft/store';

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
  revokedAt: number | null;
}

export async function findMembership(tx: TeamTx, membershipId: string): Promise<MembershipRow | null> {
  const row = await tx.db.membership.findUnique({
    where: { teamId_id: { teamId: tx.teamId, id: membershipId } },
  });
  return row && toMembership(row);
}

export async function countAdmins(tx: TeamTx): Promise<number> {
  return tx.db.membership.count({ where: { teamId: tx.teamId, role: 'admin', revokedAt: null } });
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
