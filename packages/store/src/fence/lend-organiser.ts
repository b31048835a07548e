import { applySettings } from './run-fenced';
import type { MemberTx } from './with-team';

/**
 * Opens the fence of the organiser beside the team's own for what `work` writes there on the team's behalf, and closes it
 * again: what a team agrees to share lies where the organiser reads. Only for the organiser whose event the team took over,
 * which the caller has looked up inside the team's fence; `work` must touch nothing but the team's own copies.
 */
export async function lendOrganiser<T>(
  tx: MemberTx,
  organiserId: string,
  work: () => Promise<T>,
): Promise<T> {
  const own = { team: tx.teamId, user: tx.member.userId };
  await applySettings(tx.db, { ...own, organiser: organiserId });
  try {
    return await work();
  } finally {
    await applySettings(tx.db, own);
  }
}
