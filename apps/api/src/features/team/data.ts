import type { MyTenants, TeamRole } from '@halfshaft/contract';
import { type TeamTx, type UserTx, withNewTeam } from '@halfshaft/store';
import { toDate } from '../../clock';

export { withNewTeam };

export interface NewMember {
  personId: string;
  membershipId: string;
  userId: string;
  name: string;
  role: TeamRole;
  eventId: string | null;
}

export async function createTeamRow(tx: TeamTx, name: string, now: number): Promise<void> {
  await tx.db.team.create({ data: { teamId: tx.teamId, name, createdAt: toDate(now) } });
}

export async function createPersonRow(
  tx: TeamTx,
  personId: string,
  name: string,
  now: number,
): Promise<void> {
  const { teamId } = tx;
  await tx.db.person.create({
    data: { teamId, id: personId, name, initials: initialsOf(name), createdAt: toDate(now) },
  });
}

/** A person together with the account that acts as them. */
export async function createMember(tx: TeamTx, member: NewMember, now: number): Promise<void> {
  const { personId, membershipId, userId, name, role, eventId } = member;
  await createPersonRow(tx, personId, name, now);
  await tx.db.membership.create({
    data: { teamId: tx.teamId, id: membershipId, userId, personId, role, eventId, createdAt: toDate(now) },
  });
}

/** First letters of the first and last word: what a mechanic writes on a sheet. */
export function initialsOf(name: string): string {
  const words = name.split(/\s+/).filter(Boolean);
  const first = [...(words[0] ?? '')];
  const last = words.length > 1 ? [...(words.at(-1) ?? '')] : [];
  const letters = last.length > 0 ? [first[0], last[0]] : first.slice(0, 2);
  return letters.join('').toUpperCase();
}

export async function findTeamName(tx: TeamTx): Promise<string> {
  const row = await tx.db.team.findUniqueOrThrow({ where: { teamId: tx.teamId } });
  return row.name;
}

export async function listMyTenants(tx: UserTx): Promise<MyTenants> {
  const { db, userId } = tx;
  const mine = { userId, revokedAt: null };
  const memberships = await db.membership.findMany({ where: mine, orderBy: { createdAt: 'asc' } });
  const teams = await db.team.findMany({ where: { teamId: { in: memberships.map((row) => row.teamId) } } });
  const helping = await db.organiserMembership.findMany({ where: mine });
  const organisers = await db.organiser.findMany({
    where: { organiserId: { in: helping.map((row) => row.organiserId) } },
    orderBy: { name: 'asc' },
  });
  const nameOf = new Map(teams.map((team) => [team.teamId, team.name]));
  return {
    teams: memberships.map(({ teamId, role, personId, eventId }) => ({
      teamId,
      name: nameOf.get(teamId) ?? '',
      role: role as TeamRole,
      personId,
      eventId,
    })),
    organisers: organisers.map(({ organiserId, name }) => ({ organiserId, name })),
  };
}
