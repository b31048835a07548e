import type { TeamTx } from '../fence/with-team';

/**
 * Takes the event's log for this transaction: actions of one event are decided one after the other, so each is decided
 * on all that was accepted before it. Returns the last seq, or null when the team has no such event.
 */
export async function lockLog(tx: TeamTx, eventId: string): Promise<number | null> {
  const rows = await tx.db.$queryRaw<{ last_seq: number }[]>`
    SELECT last_seq FROM log_head WHERE team_id = ${tx.teamId}::uuid AND event_id = ${eventId}::uuid FOR UPDATE`;
  return rows[0]?.last_seq ?? null;
}
