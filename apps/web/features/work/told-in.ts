import type { EventReplica } from '@halfshaft/contract';
import { applyInPlace, concernsOf, draftOf, type LogEntry } from '@halfshaft/worklog';
import type { ConfirmedLog } from './confirmed-log';
import { concernSentenceOf } from './entry-sentence';
import { entryNamesOf } from './names';
import type { ToldNotice } from './outbox-box';
import type { Place } from './waiting-action';

/** What of a page of the log the person of this phone must be told, since someone else touched what was theirs. */
export function toldIn(
  before: ConfirmedLog,
  page: readonly LogEntry[],
  replica: EventReplica,
  place: Place,
): ToldNotice[] {
  const owner = replica.me.personId;
  const fresh = page.filter((entry) => entry.seq > before.lastSeq);
  if (fresh.every((entry) => entry.by === owner || entry.enteredBy === owner)) return [];
  const state = draftOf(before.state);
  const told: ToldNotice[] = [];
  for (const entry of fresh) {
    const names = () => entryNamesOf(replica, state);
    for (const { personId, code } of concernsOf(state, entry)) {
      if (personId !== owner) continue;
      const sentence = concernSentenceOf(code, entry, names());
      const id = `${place} ${owner} ${entry.seq}`;
      told.push({ seq: entry.seq, notice: { id, place, owner, kind: 'told', sentence, action: null } });
    }
    applyInPlace(state, entry);
  }
  return told;
}
