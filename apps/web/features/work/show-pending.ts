import type { EventReplica } from '@halfshaft/contract';
import {
  applyAll,
  type LogEntry,
  numberEntries,
  type PushedAction,
  type WorkState,
} from '@halfshaft/worklog';
import { decideLocally } from './decide-locally';

/** What the screen shows before the server has answered. */
export interface Shown {
  state: WorkState;
  /** Entries that own actions would make, with provisional seqs and no server time. */
  pending: LogEntry[];
}

/**
 * Own actions on top of what is confirmed, in their order. One that would be refused by now (someone else was first)
 * changes nothing; the server says so in a moment. One whose entries have arrived already is passed over.
 */
export function showPending(
  confirmed: { state: WorkState; lastSeq: number },
  actions: readonly PushedAction[],
  replica: EventReplica,
): Shown {
  let { state } = confirmed;
  const pending: LogEntry[] = [];
  for (const action of actions) {
    if (state.actions.has(action.actionId)) continue;
    const outcome = decideLocally(state, action, replica);
    if (!outcome.ok) continue;
    const entries = numberEntries(outcome.entries, confirmed.lastSeq + pending.length + 1, null);
    pending.push(...entries);
    state = applyAll(state, entries);
  }
  return { state, pending };
}
