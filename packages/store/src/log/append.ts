import type { TeamTx } from '../fence/with-team';
import { LOG_CHANNEL } from './channel';

/** A log entry that has no place in the log yet. */
export interface EntryToAppend {
  actionId: string;
  kind: string;
  by: string;
  enteredBy: string;
  deviceId: string;
  deviceTime: number;
  flags: unknown[];
  body: unknown;
}

/**
 * Appends entries to the event's log and tells listeners. Returns the seq of the first; the others follow without a gap.
 * The seq is taken by UPDATE … RETURNING inside the transaction, so the row lock orders writers until they commit.
 */
export async function appendEntries(
  tx: TeamTx,
  eventId: string,
  entries: EntryToAppend[],
  serverTime: number,
): Promise<number> {
  const rows = await tx.db.$queryRaw<{ last_seq: number }[]>`
    UPDATE log_head SET last_seq = last_seq + ${entries.length}::int
    WHERE team_id = ${tx.teamId}::uuid AND event_id = ${eventId}::uuid RETURNING last_seq`;
  const lastSeq = rows[0]?.last_seq;
  if (lastSeq === undefined) throw new Error('appendEntries: this event has no log');
  const firstSeq = lastSeq - entries.length + 1;
  await tx.db.logEntry.createMany({
    data: entries.map((entry, index) => ({
      teamId: tx.teamId,
      eventId,
      seq: firstSeq + index,
      actionId: entry.actionId,
      kind: entry.kind,
      byPerson: entry.by,
      enteredBy: entry.enteredBy,
      deviceId: entry.deviceId,
      deviceTime: BigInt(entry.deviceTime),
      serverTime: BigInt(serverTime),
      flags: entry.flags as object[],
      body: entry.body as object,
    })),
  });
  const notice = JSON.stringify({ team: tx.teamId, event: eventId, seq: lastSeq });
  await tx.db.$queryRaw`SELECT pg_notify(${LOG_CHANNEL}, ${notice})::text`;
  return firstSeq;
}
