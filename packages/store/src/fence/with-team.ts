import type { TeamRole } from '@halfshaft/contract';
import type { Store } from '../client/store';
import { applySettings, runFenced, type TransactionClient } from './run-fenced';

declare const teamFence: unique symbol;
declare const memberFence: unique symbol;

/** Proof of standing inside one team's fence. Only this file can make one; every `data.ts` asks for it. */
export interface TeamTx {
  readonly db: TransactionClient;
  readonly teamId: string;
  readonly [teamFence]: true;
}

/** A person's standing in the team, read inside the same transaction. */
export interface Member {
  membershipId: string;
  personId: string;
  userId: string;
  role: TeamRole;
  /** Helpers are let in for one event; null means the whole team. */
  eventId: string | null;
  revokedAt: Date | null;
}

/** Proof of standing inside the fence as a member. */
export interface MemberTx extends TeamTx {
  readonly member: Member;
  readonly [memberFence]: true;
}

/** Who asks for which team. Whether they belong to it is checked inside, never believed. */
export interface TeamClaim {
  teamId: string;
  userId: string;
}

/** The team does not exist, or the person does not belong to it: one answer for both, on purpose. */
export class NotAMember extends Error {
  override name = 'NotAMember';
}

/**
 * One transaction inside the team's fence, for a member of it. Throws `NotAMember` otherwise.
 * `letRevoked`: a revoked member is let in too (facts recorded before a revocation still count); the caller must look
 * at `member.revokedAt`.
 */
export function withTeam<T>(
  store: Store,
  claim: TeamClaim,
  work: (tx: MemberTx) => Promise<T>,
  options: { letRevoked?: boolean } = {},
): Promise<T> {
  return runFenced(store, { team: claim.teamId, user: claim.userId }, async (db) => {
    const member = await findMember(db, claim);
    if (!member || (member.revokedAt && !options.letRevoked)) throw new NotAMember();
    return work({ db, teamId: claim.teamId, member } as MemberTx);
  });
}

/**
 * One transaction inside the team's fence for those of these accounts that belong to it now; null, and no `work`, when none
 * does. For telling several people of one team at once what is the same for all.
 */
export function withMembers<T>(
  store: Store,
  { teamId, userIds }: { teamId: string; userIds: readonly string[] },
  work: (tx: TeamTx, members: readonly Member[]) => Promise<T>,
): Promise<T | null> {
  return runFenced(store, { team: teamId }, async (db) => {
    const rows = await db.membership.findMany({
      where: { teamId, userId: { in: [...new Set(userIds)] }, revokedAt: null },
    });
    return rows.length === 0 ? null : work({ db, teamId } as TeamTx, rows.map(toMember));
  });
}

async function findMember(db: TransactionClient, claim: TeamClaim): Promise<Member | null> {
  const row = await db.membership.findUnique({
    where: { teamId_userId: { teamId: claim.teamId, userId: claim.userId } },
  });
  return row && toMember(row);
}

function toMember(row: Omit<Member, 'membershipId' | 'role'> & { id: string; role: string }): Member {
  const { id: membershipId, personId, userId, eventId, revokedAt } = row;
  return { membershipId, personId, userId, role: row.role as TeamRole, eventId, revokedAt };
}

/** One transaction inside the fence of a team that is being founded. The id must be new and made by the caller. */
export function withNewTeam<T>(store: Store, claim: TeamClaim, work: (tx: TeamTx) => Promise<T>): Promise<T> {
  return runFenced(store, { team: claim.teamId, user: claim.userId }, (db) =>
    work({ db, teamId: claim.teamId } as TeamTx),
  );
}

/** A long piece of work, such as a whole log that comes in at once. */
const LONG_RUN_MS = 120_000;

/**
 * One transaction inside the fence of a team that a file from another server names: for a member of it, or, where this
 * server has no such team, for whoever is to found it here. Nobody gets into a team that is here already by naming it:
 * throws `NotAMember` then. Of two who found it at once the second is run again and finds it.
 */
export function withCarriedTeam<T>(
  store: Store,
  claim: TeamClaim,
  work: (standing: { isNew: true; tx: TeamTx } | { isNew: false; tx: MemberTx }) => Promise<T>,
): Promise<T> {
  const { teamId, userId } = claim;
  return runFenced(
    store,
    { team: teamId, user: userId },
    async (db) => {
      if ((await db.team.count({ where: { teamId } })) === 0) {
        return work({ isNew: true, tx: { db, teamId } as TeamTx });
      }
      const member = await findMember(db, claim);
      if (!member || member.revokedAt) throw new NotAMember();
      return work({ isNew: false, tx: { db, teamId, member } as MemberTx });
    },
    LONG_RUN_MS,
  );
}

/** What a link lets its holder see before joining. */
export interface HeldInvite {
  inviteId: string;
  role: TeamRole;
  eventId: string | null;
  expiresAt: Date;
  revokedAt: Date | null;
}

/**
 * One transaction inside the fence of the team whose link the caller holds. `work` gets null when no such link exists;
 * whether it is still good is for the caller to decide.
 */
export function withInvite<T>(
  store: Store,
  claim: { tokenHash: string; userId: string | null },
  work: (held: { tx: TeamTx; invite: HeldInvite } | null) => Promise<T>,
): Promise<T> {
  const settings = { invite: claim.tokenHash, ...(claim.userId ? { user: claim.userId } : {}) };
  return runFenced(store, settings, async (db) => {
    const row = await db.invite.findFirst({ where: { tokenHash: claim.tokenHash } });
    if (!row) return work(null);
    await applySettings(db, { ...settings, team: row.teamId });
    const { id: inviteId, eventId, expiresAt, revokedAt } = row;
    const invite = { inviteId, role: row.role as TeamRole, eventId, expiresAt, revokedAt };
    return work({ tx: { db, teamId: row.teamId } as TeamTx, invite });
  });
}
