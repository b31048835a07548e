import { randomUUID } from 'node:crypto';
import type { TeamRole } from '@halfshaft/contract';
import type { MemberTx, Store } from '@halfshaft/store';
import { toDate } from '../../clock';
import { AppError, notAllowed, unknown } from '../../errors';
import { mayDecideRoles, mayManage, peopleFor } from './ability';
import {
  countAdmins,
  createPersonRow,
  findMembership,
  handOverMembership,
  listPeople as listAllPeople,
  listTeamIds,
  type MembershipRow,
  updateMembership,
} from './data';

export async function listPeople(tx: MemberTx) {
  return peopleFor(tx.member, await listAllPeople(tx));
}

/** Someone without an account, named so that others can record for them. */
export async function addPerson(tx: MemberTx, name: string, now: number) {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const personId = randomUUID();
  await createPersonRow(tx, personId, name, now);
  return { personId };
}

export async function setRole(tx: MemberTx, membershipId: string, role: TeamRole): Promise<void> {
  const membership = await membershipToChange(tx, membershipId);
  if (role !== 'admin') await keepOneAdmin(tx, membership);
  await updateMembership(tx, membershipId, { role });
}

/** From now on the account is out. What it recorded before stays, and what it recorded offline before still counts. */
export async function revokeMembership(tx: MemberTx, membershipId: string, now: number): Promise<void> {
  const membership = await membershipToChange(tx, membershipId);
  if (membership.revokedAt !== null) return;
  await keepOneAdmin(tx, membership);
  await updateMembership(tx, membershipId, { revokedAt: toDate(now) });
}

async function membershipToChange(tx: MemberTx, membershipId: string) {
  if (!mayDecideRoles(tx.member)) throw notAllowed('an admin');
  const membership = await findMembership(tx, membershipId);
  if (!membership) throw unknown();
  return membership;
}

/** Refuses to lose the last one who decides roles. */
async function keepOneAdmin(tx: MemberTx, leaving: MembershipRow): Promise<void> {
  if (leaving.revokedAt !== null || !mayDecideRoles(leaving)) return;
  if ((await countAdmins(tx)) > 1) return;
  throw new AppError('conflict', 'This is the only admin. Make someone else admin first.');
}

/** A helper with a name only made a real account: it takes over every place the helper had. A revocation stays one. */
export async function moveMemberships(
  store: Store,
  helperUserId: string,
  accountUserId: string,
): Promise<void> {
  for (const teamId of await listTeamIds(store, helperUserId)) {
    await handOverMembership(store, teamId, helperUserId, accountUserId);
  }
}
