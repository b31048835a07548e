import type { EventReplica, PushResult } from '@halfshaft/contract';
import {
  ACTION_VERSION,
  type ActionKind,
  type ArgsOf,
  type EntryDraft,
  type LogEntry,
  numberEntries,
  type PersonId,
  type PushedAction,
} from '@halfshaft/worklog';
import { Backoff } from './backoff';
import type { ConfirmedLog } from './confirmed-log';
import { decideLocally } from './decide-locally';
import { sentenceOf } from './entry-sentence';
import type { EventShelf } from './event-shelf';
import { LiveFeed, type OpenLive } from './live-source';
import { LogPuller } from './log-puller';
import { entryNamesOf, nameOf } from './names';
import { noticesOfAnswers } from './notices-of-answers';
import { othersIn } from './others-in';
import { Outbox } from './outbox';
import type { BoxChange, OutboxBox } from './outbox-box';
import { PendingView, type Shown, stateAfter } from './pending-view';
import { Sender, type ToSend, type Trouble } from './sender';
import type { TakeTurn } from './take-turn';
import { toldIn } from './told-in';
import type { Place, WaitingAction } from './waiting-action';
import type { WorkClient } from './work-client';
import { type ActResult, NOTHING_YET, type WorkSnapshot, type WorkStatus } from './work-snapshot';

export interface WorkSurroundings {
  client: WorkClient;
  openLive: OpenLive;
  box: OutboxBox;
  takeTurn: TakeTurn;
  shelf: EventShelf;
  now: () => number;
  newId: () => string;
  /** Runs something after the screen had its turn. */
  later: (run: () => void) => void;
}

/** A copy of the event this old is fetched anew when the screen is looked at again. */
const STALE_MILLIS = 60_000;
/** While more than this waits, the log is fetched now and then instead of after each answer. */
const LONG_QUEUE = 200;
const PULL_EVERY_MILLIS = 3000;

/** The work of one team at one event on this device: what is confirmed, what waits, and the two together. */
export class WorkStore {
  private readonly listeners = new Set<() => void>();
  private readonly outbox: Outbox;
  private readonly view: PendingView;
  private readonly puller: LogPuller;
  private readonly sender: Sender;
  private readonly feed: LiveFeed;
  private readonly replicaBackoff = new Backoff();
  private replica: EventReplica | null = null;
  private receivedAt = 0;
  private fetchingReplica = false;
  private connected = false;
  private running = false;
  private restored: Promise<void> | null = null;
  private readTrouble: Trouble | null = null;
  private sendTrouble: Trouble | null = null;
  private lastPullAt = 0;
  private troubleOf: PersonId | null = null;
  private forgetTabs: (() => void) | null = null;
  /** Accepted, but their entries have not been pulled yet: shown on, so that nothing flickers. */
  private settled: PushedAction[] = [];
  private snapshot: WorkSnapshot = NOTHING_YET;

  constructor(
    private readonly around: WorkSurroundings,
    private readonly place: Place,
  ) {
    const { client, box, shelf, newId, now, later, takeTurn } = around;
    this.outbox = new Outbox({ box, place, newId, onChange: () => this.tell() });
    this.view = new PendingView({ onReady: () => this.tell(), now, later });
    this.puller = new LogPuller({
      pull: client.pull,
      shelf,
      onNews: (before, page) => this.onNews(before, page),
      onChange: (trouble) => this.onPulled(trouble),
    });
    this.sender = new Sender({
      place,
      push: client.push,
      takeTurn,
      refresh: () => this.outbox.refresh(),
      next: (heldFor) => this.nextToSend(heldFor),
      onAnswers: (results, actions) => this.onAnswers(results, actions),
      onTrouble: (trouble, owner) => this.onSendTrouble(trouble, owner),
    });
    this.feed = new LiveFeed({
      open: around.openLive,
      onSeq: (seq) => this.hearSeq(seq),
      onEntries: (entries) => this.hearEntries(entries),
      onChange: (connected) => this.onConnected(connected),
    });
    this.snapshot = this.makeSnapshot();
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly getSnapshot = (): WorkSnapshot => this.snapshot;

  get deviceId(): string {
    return this.outbox.deviceId;
  }

  /** What this device kept is shown first; the server is asked as soon as that is there. */
  start(): void {
    this.running = true;
    this.forgetTabs ??= this.around.box.hear((change) => this.onOtherTab(change));
    this.restored ??= this.restore();
    void this.restored.then(() => {
      if (!this.running) return;
      void this.fetchReplica();
      this.puller.pull();
      this.feed.start();
      this.sender.resume();
    });
  }

  stop(): void {
    this.running = false;
    this.forgetTabs?.();
    this.forgetTabs = null;
    this.feed.stop();
    this.puller.stop();
    this.replicaBackoff.reset();
    this.sender.stop();
  }

  /** Does something in the bay: kept on the device, then shown, sent when it can be. */
  readonly act = <K extends ActionKind>(kind: K, args: ArgsOf<K>, by: PersonId): ActResult => {
    const { replica } = this;
    if (!replica) return { ok: false, sentence: 'The event is not here yet. Wait until it has come.' };
    const action: PushedAction = {
      kind,
      args,
      by,
      actionId: this.around.newId(),
      deviceId: this.outbox.deviceId,
      deviceSeq: this.outbox.nextSeq(),
      deviceTime: this.around.now(),
      version: ACTION_VERSION,
    };
    const outcome = decideLocally(this.stateToDecideOn(replica), action, replica);
    if (!outcome.ok) {
      const { actionId: id } = action;
      const about = { id, place: this.place, owner: replica.me.personId, action };
      void this.outbox.addNotice({ ...about, kind: 'refused', sentence: outcome.sentence });
      return outcome;
    }
    void this.outbox.add(this.waitingOf(action, outcome.entries, replica)).then(() => this.kick());
    return { ok: true, actionId: action.actionId };
  };

  readonly dismiss = (noticeId: string): void => {
    void this.outbox.dismiss(noticeId);
  };

  /** A person asked, signed in again, or the network is back: everything at once instead of after its pause. */
  readonly retry = (): void => {
    this.readTrouble = null;
    this.sendTrouble = null;
    this.replicaBackoff.reset();
    void this.fetchReplica();
    this.puller.pull();
    this.feed.hurry();
    this.sender.resume();
    this.readStorage();
    this.tell();
  };

  /** The screen is looked at again: cards, people and the itinerary may have changed meanwhile. */
  lookedAt(): void {
    if (this.around.now() - this.receivedAt > STALE_MILLIS) void this.fetchReplica();
    this.puller.pull();
    this.readStorage();
  }

  /** A form of this page changed the event. */
  eventChanged(): void {
    void this.fetchReplica();
  }

  /** Another tab may have written to the storage and not have lived to tell or send it. */
  readStorage(): void {
    void this.outbox.refresh().then(() => this.kick());
  }

  private onOtherTab(change: BoxChange): void {
    this.outbox.hear(change);
    if (change.added) this.kick();
  }

  private kick(): void {
    if (this.running) this.sender.kick();
  }

  private async restore(): Promise<void> {
    const [kept] = await Promise.all([this.around.shelf.read(), this.outbox.open()]);
    if (kept) {
      this.replica = kept.replica;
      this.receivedAt = kept.receivedAt;
      this.puller.restore(kept.entries);
    }
    this.tell();
  }

  private async fetchReplica(): Promise<void> {
    if (this.fetchingReplica) return;
    this.fetchingReplica = true;
    const answer = await this.around.client.getReplica();
    this.fetchingReplica = false;
    if (answer.ok) this.takeReplica(answer.value);
    else {
      this.readTrouble = answer;
      if (!this.replica && isPassing(answer)) this.replicaBackoff.again(() => void this.fetchReplica());
    }
    this.tell();
  }

  private takeReplica(replica: EventReplica): void {
    const before = this.replica?.me.personId;
    this.replica = replica;
    this.receivedAt = this.around.now();
    this.around.shelf.keepReplica(replica, this.receivedAt);
    this.replicaBackoff.reset();
    // What was held back for want of this person can go now.
    if (before !== undefined && before !== replica.me.personId && this.running) this.sender.resume();
    else this.kick();
  }

  /** Only what was entered by the person who is signed in; before that is known, the server tells. */
  private nextToSend(heldFor: ReadonlySet<PersonId>): ToSend | null {
    const waiting = this.outbox.list();
    const owner = this.replica?.me.personId ?? waiting.find((each) => !heldFor.has(each.owner))?.owner;
    if (owner === undefined) return null;
    const actions = this.outbox.listOf(owner).map((waiting) => waiting.action);
    return actions.length > 0 ? { owner, actions } : null;
  }

  /** With what was tapped a moment ago and is still being written down. */
  private stateToDecideOn(replica: EventReplica) {
    const { state, entries, confirmedSeq } = this.snapshot;
    const entering = this.outbox.listEntering().map((waiting) => waiting.action);
    return stateAfter(state, entering, replica, entries.at(-1)?.seq ?? confirmedSeq);
  }

  private waitingOf(action: PushedAction, entries: EntryDraft[], replica: EventReplica): WaitingAction {
    const { personId } = replica.me;
    const [first] = numberEntries(entries.slice(0, 1), 0, null);
    const words = first ? sentenceOf(first, entryNamesOf(replica, this.snapshot.state)) : action.kind;
    const whose = { owner: personId, ownerName: nameOf(replica, personId) };
    return { action, place: this.place, eventName: replica.name, ...whose, words };
  }

  /** While a long queue is sent, each answer is told by the stream too. */
  private hearSeq(seq: number): void {
    if (this.outbox.list().length <= LONG_QUEUE) this.puller.hear(seq);
  }

  private hearEntries(entries: readonly LogEntry[]): void {
    if (this.outbox.list().length <= LONG_QUEUE) this.puller.take(entries);
  }

  /** What others did with this person's work is told, like an answer, until it has been read. */
  private onNews(before: ConfirmedLog, page: readonly LogEntry[]): void {
    if (!this.replica) return;
    const told = toldIn(before, page, this.replica, this.place);
    const owner = this.replica.me.personId;
    if (told.length > 0) void this.outbox.tell(owner, page.at(-1)?.seq ?? 0, told);
  }

  private onPulled(trouble: Trouble | null): void {
    this.readTrouble = trouble;
    const { state } = this.puller.log;
    this.settled = this.settled.filter((action) => !state.actions.has(action.actionId));
    if (this.hasUnknownPerson()) void this.fetchReplica();
    this.tell();
  }

  /** Someone joined after the event was fetched, and has done something since. */
  private hasUnknownPerson(): boolean {
    const last = this.puller.log.entries.at(-1);
    return last !== undefined && this.replica !== null && !this.knows(last.by);
  }

  private knows(personId: PersonId): boolean {
    return this.replica?.people.some((person) => person.personId === personId) ?? false;
  }

  private async onAnswers(results: readonly PushResult[], actions: readonly PushedAction[]): Promise<void> {
    const byId = new Map(actions.map((action) => [action.actionId, action]));
    for (const { actionId, status } of results) {
      const action = byId.get(actionId);
      if (action && status === 'accepted') this.settled.push(action);
    }
    const owner = this.outbox.list().find(({ action }) => byId.has(action.actionId))?.owner;
    const notices = noticesOfAnswers(results, byId, { place: this.place, owner: owner ?? '' });
    await this.outbox.settle({ ids: results.map((result) => result.actionId), notices });
    await this.outbox.keepLoose();
    this.pullNowAndThen();
  }

  private pullNowAndThen(): void {
    const now = this.around.now();
    const isLong = this.outbox.list().length > LONG_QUEUE;
    if (isLong && now - this.lastPullAt < PULL_EVERY_MILLIS) return;
    this.lastPullAt = now;
    this.puller.pull();
  }

  private onSendTrouble(trouble: Trouble | null, owner: PersonId): void {
    if (trouble === this.sendTrouble) return;
    this.sendTrouble = trouble;
    this.troubleOf = owner;
    // Maybe somebody else has signed in since: then these wait, and the screen must not speak in the old name.
    if (trouble?.problem.code === 'notAllowed') void this.fetchReplica();
    this.tell();
  }

  private onConnected(connected: boolean): void {
    this.connected = connected;
    // What failed for want of a network need not wait for its pause, nor what a tab left that was killed meanwhile.
    if (connected) this.readStorage();
    this.tell();
  }

  private tell(): void {
    this.snapshot = this.makeSnapshot();
    for (const listener of this.listeners) listener();
  }

  private shownNow(waiting: readonly WaitingAction[]): Shown {
    const { log } = this.puller;
    if (!this.replica) return { log, state: log.state, pending: [] };
    return this.view.over(log, this.replica, [...this.settled, ...waiting.map(({ action }) => action)]);
  }

  private makeSnapshot(): WorkSnapshot {
    const me = this.replica?.me.personId;
    const waiting = me === undefined ? this.outbox.list() : this.outbox.listOf(me);
    const { log, state, pending } = this.shownNow(waiting);
    return {
      status: this.statusNow(),
      problem: (this.ownSendTrouble() ?? this.readTrouble)?.problem ?? null,
      replica: this.replica,
      receivedAt: this.receivedAt,
      state,
      entries: [...log.entries, ...pending],
      confirmedSeq: log.lastSeq,
      waiting: waiting.length,
      unkept: this.outbox.looseCount,
      othersWaiting: me === undefined ? [] : othersIn(this.outbox.list(), me),
      notices: me === undefined ? [] : this.outbox.noticesOf(me),
    };
  }

  /** That another's entries are not taken is no trouble of whoever is signed in: a sentence says that they wait. */
  private ownSendTrouble(): Trouble | null {
    const me = this.replica?.me.personId;
    return me === undefined || this.troubleOf === me ? this.sendTrouble : null;
  }

  private statusNow(): WorkStatus {
    if (!this.replica || !this.puller.caughtUp) return this.readTrouble ? 'failed' : 'loading';
    if (this.readTrouble?.lost || this.ownSendTrouble()?.lost) return 'offline';
    return this.connected && !this.readTrouble ? 'live' : 'behind';
  }
}

function isPassing({ problem, lost }: Trouble): boolean {
  return lost || problem.code === 'unexpected';
}
