import type { EventReplica, Problem } from '@halfshaft/contract';
import { type ActionId, emptyState, type LogEntry, type WorkState } from '@halfshaft/worklog';
import type { WorkNotice } from './waiting-action';

export interface OthersWaiting {
  name: string;
  count: number;
}

/** `live`: changes arrive by themselves; `behind`: the server is asked at intervals; `offline`: it is not reached. */
export type WorkStatus = 'loading' | 'failed' | 'live' | 'behind' | 'offline';

/** All a screen needs of one event's work. A new object at each change. */
export interface WorkSnapshot {
  status: WorkStatus;
  /** What stands in the way: sign-in run out, not a member, server not reached. Nothing is lost by any of them. */
  problem: Problem | null;
  /** Null only while `loading` or `failed`. */
  replica: EventReplica | null;
  /** This device's clock when the replica came, for the event's clock. */
  receivedAt: number;
  /** What is confirmed, with own unanswered actions on top. */
  state: WorkState;
  /** By seq; own unanswered ones last, without a server time. */
  entries: readonly LogEntry[];
  /** Beyond this seq nothing is confirmed yet. */
  confirmedSeq: number;
  /** How many own actions have not been answered. */
  waiting: number;
  /** How many of them the browser refused to keep: closing the page would lose them. */
  unkept: number;
  /** Other people of this device whose actions wait until they sign in. */
  othersWaiting: readonly OthersWaiting[];
  notices: readonly WorkNotice[];
}

/** Before anything is known: what the static page shows, so that the browser starts from the same. */
export const NOTHING_YET: WorkSnapshot = {
  status: 'loading',
  problem: null,
  replica: null,
  receivedAt: 0,
  state: emptyState,
  entries: [],
  confirmedSeq: 0,
  waiting: 0,
  unkept: 0,
  othersWaiting: [],
  notices: [],
};

export type ActResult = { ok: true; actionId: ActionId } | { ok: false; sentence: string };
