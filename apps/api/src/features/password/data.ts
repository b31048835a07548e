import { asUser, NotAMember, type Store, type TeamClaim, type TeamTx, withTeam } from '@halfshaft/store';
import { findMembership, type MembershipRow } from '../people/data';

export { makeToken } from '../invite/data';
export { withTeam };

/** The account behind a membership of the team; null when there is no such one, or it was taken out. */
export async function findAccountId(tx: TeamTx, membershipId: string): Promise<string | null> {
  const { teamId } = tx;
  const row = await tx.db.membership.findUnique({ where: { teamId_id: { teamId, id: membershipId } } });
  return row && row.revokedAt === null ? row.userId : null;
}

/**
 * How many teams and organisers an account belongs to. What it was taken out of counts too: facts it recorded before then
 * are still taken from it there.
 */
export function countPlaces(store: Store, userId: string): Promise<number> {
  return asUser(store, userId, async ({ db }) => {
    const teams = await db.membership.count({ where: { userId } });
    return teams + (await db.organiserMembership.count({ where: { userId } }));
  });
}

/** Who made a link for this account, in the team of both; null when the account is in that team no more. */
export async function findMaker(
  store: Store,
  claim: TeamClaim,
  membershipId: string,
): Promise<MembershipRow | null> {
  try {
    return await withTeam(store, claim, (tx) => findMembership(tx, membershipId));
  } catch (error) {
    if (error instanceof NotAMember) return null;
    throw error;
  }
}
