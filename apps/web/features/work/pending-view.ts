import type { EventReplica } from '@halfshaft/contract';
import {
  applyInPlace,
  draftOf,
  type LogEntry,
  numberEntries,
  type PushedAction,
  type WorkDraft,
  type WorkState,
} from '@halfshaft/worklog';
import type { ConfirmedLog } from './confirmed-log';
import { decideLocally } from './decide-locally';

/** So many are worked out between two frames without anyone noticing. More are worked out in slices. */
const AT_ONCE = 100;
/** Of each slice: the rest of the time belongs to thumbs and drawing. */
const SLICE_MILLIS = 8;

/** What the screen shows before the server has answered. */
export interface Shown {
  /** What it stands on: the newest log, or for a moment the one before. */
  log: ConfirmedLog;
  state: WorkState;
  /** Entries that own actions would make, with provisional seqs and no server time. */
  pending: readonly LogEntry[];
}

interface Work {
  log: ConfirmedLog;
  replica: EventReplica;
  actions: readonly PushedAction[];
  /** How many of the actions have been decided. */
  done: number;
  draft: WorkDraft;
  pending: LogEntry[];
}

export interface PendingViewParts {
  /** A long run has been worked out: look again. */
  onReady: () => void;
  now: () => number;
  /** Runs something after the screen had its turn. */
  later: (run: () => void) => void;
}

/**
 * Own actions on top of what is confirmed, in their order. One that would be refused by now (someone else was first)
 * changes nothing; the server says so in a moment. One whose entries have arrived already is passed over. What was
 * decided before is not decided again while nothing below it has changed.
 */
export class PendingView {
  private current: Work | null = null;
  private building: Work | null = null;

  constructor(private readonly parts: PendingViewParts) {}

  over(log: ConfirmedLog, replica: EventReplica, actions: readonly PushedAction[]): Shown {
    const known = this.current;
    const goesOn = known !== null && isShortStartOf(known.actions, actions);
    if (goesOn && standsOn(known, log, replica)) return this.settleOn(known, actions);
    if (actions.length <= AT_ONCE) return this.settleOn(workOf(log, replica), actions);
    this.buildSlowly(log, replica, actions);
    // Meanwhile the one before, with what was done since; at the very first what is confirmed.
    if (goesOn) return this.settleOn(known, actions);
    return known ? shownOf(known) : { log, state: log.state, pending: [] };
  }

  private settleOn(work: Work, actions: readonly PushedAction[]): Shown {
    if (work.actions === actions || work.done === actions.length) return shownOf(work);
    // A new object, since screens compare; the rows in it are shared.
    const next = { ...work, actions, draft: draftOf(work.draft), pending: [...work.pending] };
    decideUntil(next, () => false);
    this.current = next;
    return shownOf(next);
  }

  private buildSlowly(log: ConfirmedLog, replica: EventReplica, actions: readonly PushedAction[]): void {
    const isRunning = this.building !== null;
    if (this.building && standsOn(this.building, log, replica) && isStartOf(this.building.actions, actions)) {
      this.building.actions = actions;
    } else if (!this.building) {
      this.building = { ...workOf(log, replica), actions };
    }
    // One that stands on an older log is finished first: begun anew at each change it would never end.
    if (!isRunning) this.parts.later(() => this.buildSlice());
  }

  private buildSlice(): void {
    const work = this.building;
    if (!work) return;
    const until = this.parts.now() + SLICE_MILLIS;
    decideUntil(work, () => this.parts.now() >= until);
    if (work.done < work.actions.length) {
      this.parts.later(() => this.buildSlice());
      return;
    }
    this.building = null;
    this.current = work;
    this.parts.onReady();
  }
}

/** The state a few actions lead to, for deciding the next one while these are still on their way into the box. */
export function stateAfter(
  state: WorkState,
  actions: readonly PushedAction[],
  replica: EventReplica,
  confirmedSeq: number,
): WorkState {
  if (actions.length === 0) return state;
  const work = { ...workOf({ entries: [], state, lastSeq: confirmedSeq }, replica), actions };
  decideUntil(work, () => false);
  return work.draft;
}

function workOf(log: ConfirmedLog, replica: EventReplica): Work {
  return { log, replica, actions: [], done: 0, draft: draftOf(log.state), pending: [] };
}

function shownOf({ log, draft, pending }: Work): Shown {
  return { log, state: draft, pending };
}

function standsOn(work: Work, log: ConfirmedLog, replica: EventReplica): boolean {
  return work.log === log && work.replica === replica;
}

function isStartOf(known: readonly PushedAction[], actions: readonly PushedAction[]): boolean {
  return (
    known.length <= actions.length &&
    known.every((action, index) => action.actionId === actions[index]?.actionId)
  );
}

function isShortStartOf(known: readonly PushedAction[], actions: readonly PushedAction[]): boolean {
  return actions.length - known.length <= AT_ONCE && isStartOf(known, actions);
}

function decideUntil(work: Work, isTimeUp: () => boolean): void {
  while (work.done < work.actions.length) {
    const action = work.actions[work.done];
    if (action && !work.draft.actions.has(action.actionId)) addTo(work, action);
    work.done += 1;
    if (isTimeUp()) return;
  }
}

function addTo(work: Work, action: PushedAction): void {
  const outcome = decideLocally(work.draft, action, work.replica);
  if (!outcome.ok) return;
  const firstSeq = work.log.lastSeq + work.pending.length + 1;
  const entries = numberEntries(outcome.entries, firstSeq, null);
  work.pending.push(...entries);
  for (const entry of entries) applyInPlace(work.draft, entry);
}
