import type { Store } from '../client/store';
import { runFenced, type TransactionClient } from './run-fenced';
import { NotAMember } from './with-team';

declare const organiserFence: unique symbol;

/** Proof of standing inside one organiser's fence. */
export interface OrganiserTx {
  readonly db: TransactionClient;
  readonly organiserId: string;
  readonly [organiserFence]: true;
}

export interface OrganiserClaim {
  organiserId: string;
  userId: string;
}

/** One transaction inside the organiser's fence, for one of its people. Throws `NotAMember` otherwise. */
export function asOrganiser<T>(
  store: Store,
  claim: OrganiserClaim,
  work: (tx: OrganiserTx) => Promise<T>,
): Promise<T> {
  const { organiserId, userId } = claim;
  return runFenced(store, { organiser: organiserId, user: userId }, async (db) => {
    const row = await db.organiserMembership.findUnique({
      where: { organiserId_userId: { organiserId, userId } },
    });
    if (!row || row.revokedAt) throw new NotAMember();
    return work({ db, organiserId } as OrganiserTx);
  });
}

/** One transaction inside the fence of an organiser that is being set up. The id must be new and made by the caller. */
export function asNewOrganiser<T>(
  store: Store,
  claim: OrganiserClaim,
  work: (tx: OrganiserTx) => Promise<T>,
): Promise<T> {
  return runFenced(store, { organiser: claim.organiserId, user: claim.userId }, (db) =>
    work({ db, organiserId: claim.organiserId } as OrganiserTx),
  );
}
