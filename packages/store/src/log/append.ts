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
 * The seq is taken by UPDATE … RETURNING inside the transaction, so the row lock orders writers until they commit. All in
 * one statement, since everyone else who writes to this event waits meanwhile.
 */
export async function appendEntries(
  tx: TeamTx,
  eventId: string,
  entries: EntryToAppend[],
  serverTime: number,
): Promise<number> {
  const rows = await tx.db.$queryRaw<{ last_seq: number }[]>`
    WITH head AS (
      UPDATE log_head SET last_seq = last_seq + ${entries.length}::int
      WHERE team_id = ${tx.teamId}::uuid AND event_id = ${eventId}::uuid RETURNING team_id, event_id, last_seq
    ), added AS (
      INSERT INTO log_entry
        (team_id, event_id, seq, action_id, kind, by_person, entered_by, device_id, device_time, server_time, flags, body)
      SELECT team_id, event_id, last_seq - ${entries.length}::int + place, (e->>'actionId')::uuid, e->>'kind',
        (e->>'by')::uuid, (e->>'enteredBy')::uuid, e->>'deviceId', (e->>'deviceTime')::bigint, ${serverTime}::bigint,
        e->'flags', e->'body'
      FROM head, jsonb_array_elements(${JSON.stringify(entries)}::jsonb) WITH ORDINALITY AS given (e, place)
    )
    SELECT last_seq, pg_notify(${LOG_CHANNEL},
      json_build_object('team', team_id, 'event', event_id, 'seq', last_seq)::text)::text AS told FROM head`;
  const lastSeq = rows[0]?.last_seq;
  if (lastSeq === undefined) throw new Error('appendEntries: this event has no log');
  return lastSeq - entries.length + 1;
}
