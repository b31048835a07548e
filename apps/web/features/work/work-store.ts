import type { EventReplica, PushResult } from '@halfshaft/contract';
import {
  ACTION_VERSION,
  type ActionId,
  type ActionKind,
  type ArgsOf,
  type PersonId,
  type PushedAction,
} from '@halfshaft/worklog';
import { Backoff } from './backoff';
import { decideLocally } from './decide-locally';
import { Device } from './device';
import type { EventShelf } from './event-shelf';
import type { KeptStorage } from './kept-storage';
import { LiveFeed, type OpenLive } from './live-source';
import { LogPuller } from './log-puller';
import { NoticeBoard } from './notice-board';
import { Outbox } from './outbox';
import { SendTurn } from './send-turn';
import { Sender, type Trouble } from './sender';
import { showPending } from './show-pending';
import type { WorkClient } from './work-client';
import { type ActResult, NOTHING_YET, type WorkSnapshot, type WorkStatus } from './work-snapshot';

export interface WorkSurroundings {
  client: WorkClient;
  openLive: OpenLive;
  storage: KeptStorage;
  shelf: EventShelf;
  now: () => number;
  newId: () => string;
}

/** A copy of the event this old is fetched anew when the screen is looked at again. */
const STALE_MILLIS = 60_000;

/** The work of one team at one event on this device: what is confirmed, what waits, and the two together. */
export class WorkStore {
  private readonly listeners = new Set<() => void>();
  private readonly device: Device;
  private readonly outbox: Outbox;
  private readonly board: NoticeBoard;
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
  /** Accepted, but their entries have not been pulled yet: shown on, so that nothing flickers. */
  private settled: PushedAction[] = [];
  private snapshot: WorkSnapshot = NOTHING_YET;

  constructor(
    private readonly around: WorkSurroundings,
    /** Names team and event in storage. */
    name: string,
  ) {
    const { client, storage, shelf, newId, now } = around;
    this.device = new Device(storage, newId);
    this.outbox = new Outbox(storage, `work.${name}.outbox`);
    this.board = new NoticeBoard(storage, `work.${name}.notices`);
    this.puller = new LogPuller({
      pull: client.pull,
      shelf,
      onChange: (trouble) => this.onPulled(trouble),
    });
    this.sender = new Sender({
      push: client.push,
      outbox: this.outbox,
      turn: new SendTurn(storage, `work.${name}.turn`, newId(), now),
      onAnswers: (results, actions) => this.onAnswers(results, actions),
      onTrouble: (trouble) => this.onSendTrouble(trouble),
    });
    this.feed = new LiveFeed({
      open: around.openLive,
      onSeq: (seq) => this.puller.hear(seq),
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
    return this.device.id;
  }

  /** What this device kept is shown first; the server is asked as soon as that is there. */
  start(): void {
    this.running = true;
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
    this.feed.stop();
    this.puller.stop();
    this.replicaBackoff.reset();
    this.sender.stop();
  }

  /** Does something in the bay: shown at once, kept on the device, sent when it can be. */
  readonly act = <K extends ActionKind>(kind: K, args: ArgsOf<K>, by: PersonId): ActResult => {
    if (!this.replica) return { ok: false, sentence: 'The event is not here yet. Wait until it has come.' };
    const action: PushedAction = {
      kind,
      args,
      by,
      actionId: this.around.newId(),
      deviceId: this.device.id,
      deviceSeq: this.device.nextSeq(),
      deviceTime: this.around.now(),
      version: ACTION_VERSION,
    };
    const outcome = decideLocally(this.snapshot.state, action, this.replica);
    if (!outcome.ok) {
      this.board.add({ action, kind: 'refused', sentence: outcome.sentence });
      this.tell();
      return outcome;
    }
    this.outbox.add(action);
    this.tell();
    this.sender.kick();
    return { ok: true, actionId: action.actionId };
  };

  readonly dismiss = (actionId: ActionId): void => {
    this.board.dismiss(actionId);
    this.tell();
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
    this.tell();
  };

  /** The screen is looked at again: cards, people and the itinerary may have changed meanwhile. */
  lookedAt(): void {
    if (this.around.now() - this.receivedAt > STALE_MILLIS) void this.fetchReplica();
    this.puller.pull();
  }

  /** Another tab wrote to the storage. */
  readStorage(): void {
    this.outbox.refresh();
    this.board.refresh();
    this.tell();
    this.sender.kick();
  }

  private async restore(): Promise<void> {
    const kept = await this.around.shelf.read();
    if (!kept) return;
    this.replica = kept.replica;
    this.receivedAt = kept.receivedAt;
    this.puller.restore(kept.entries);
    this.tell();
  }

  private async fetchReplica(): Promise<void> {
    if (this.fetchingReplica) return;
    this.fetchingReplica = true;
    const answer = await this.around.client.getReplica();
    this.fetchingReplica = false;
    if (answer.ok) {
      this.replica = answer.value;
      this.receivedAt = this.around.now();
      this.around.shelf.keepReplica(this.replica, this.receivedAt);
      this.replicaBackoff.reset();
    } else {
      this.readTrouble = answer;
      if (!this.replica && isPassing(answer)) this.replicaBackoff.again(() => void this.fetchReplica());
    }
    this.tell();
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

  private onAnswers(results: readonly PushResult[], actions: readonly PushedAction[]): void {
    for (const result of results) {
      const action = actions.find((each) => each.actionId === result.actionId);
      if (!action) continue;
      if (result.status === 'accepted') this.settled.push(action);
      this.board.addAnswer(result, action);
    }
    this.puller.pull();
    this.tell();
  }

  private onSendTrouble(trouble: Trouble | null): void {
    if (trouble === this.sendTrouble) return;
    this.sendTrouble = trouble;
    this.tell();
  }

  private onConnected(connected: boolean): void {
    this.connected = connected;
    // What failed for want of a network need not wait for its pause.
    if (connected) this.sender.kick();
    this.tell();
  }

  private tell(): void {
    this.snapshot = this.makeSnapshot();
    for (const listener of this.listeners) listener();
  }

  private makeSnapshot(): WorkSnapshot {
    const { log } = this.puller;
    const waiting = this.outbox.list();
    const shown = this.replica
      ? showPending(log, [...this.settled, ...waiting], this.replica)
      : { state: log.state, pending: [] };
    return {
      status: this.statusNow(),
      problem: (this.sendTrouble ?? this.readTrouble)?.problem ?? null,
      replica: this.replica,
      receivedAt: this.receivedAt,
      state: shown.state,
      entries: [...log.entries, ...shown.pending],
      confirmedSeq: log.lastSeq,
      waiting: waiting.length,
      isKept: this.outbox.isKept,
      notices: this.board.list(),
    };
  }

  private statusNow(): WorkStatus {
    if (!this.replica || !this.puller.caughtUp) return this.readTrouble ? 'failed' : 'loading';
    if (this.readTrouble?.lost || this.sendTrouble?.lost) return 'offline';
    return this.connected && !this.readTrouble ? 'live' : 'behind';
  }
}

function isPassing({ problem, lost }: Trouble): boolean {
  return lost || problem.code === 'unexpected';
}
