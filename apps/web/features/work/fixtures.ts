import type { EntryReplica, EventReplica, Problem, PushResult } from '@halfshaft/contract';
import { type ControlRole, DEFAULT_PENALTY_RULES, type Itinerary, type Point } from '@halfshaft/itinerary';
import type { JobCard } from '@halfshaft/lifing';
import {
  type ActionId,
  applyAll,
  emptyState,
  type LogEntry,
  numberEntries,
  type PersonId,
  type PushedAction,
  sameContent,
  type TaskRef,
  type WorkState,
} from '@halfshaft/worklog';
import { decideLocally } from './decide-locally';
import type { EventShelf } from './event-shelf';
import type { LiveHearing, OpenLive } from './live-source';
import type { BoxChange, KnownDevice, OutboxBox, ToldNotice } from './outbox-box';
import type { TakeTurn } from './take-turn';
import type { Place, Settled, WaitingAction, WorkNotice } from './waiting-action';
import type { Answer, WorkClient } from './work-client';

/** For tests only: a small event, and a server, a storage and a live stream made by hand. */

export const MIA = '00000000-0000-4000-8000-000000000001';
export const KAI = '00000000-0000-4000-8000-000000000002';
export const NUTS = '00000000-0000-4000-8000-00000000000a';
export const OIL = '00000000-0000-4000-8000-00000000000b';
export const CAR = '00000000-0000-4000-8000-0000000000c1';

export const EIGHT_OCLOCK = Date.UTC(2026, 5, 13, 8, 0) / 1000;

export function taskAt(cardId: string, serviceId = 'A'): TaskRef {
  return { entryId: CAR, serviceId, source: { kind: 'card', cardId } };
}

export function cardOf(id: string, more: Partial<JobCard> = {}): JobCard {
  return {
    id,
    name: id === NUTS ? 'Wheel nuts' : 'Engine oil',
    kind: 'job',
    starterId: null,
    fitsNewPart: false,
    place: 'wholeCar',
    intervals: [{ counter: 'services', every: 1, tolerance: 0 }],
    dateLimit: null,
    conditionFactors: {},
    combineConditions: 'largest',
    seconds: 180,
    people: 2,
    leastServiceSeconds: 0,
    remoteAllowed: true,
    looks: [],
    readings: [],
    needsSignature: false,
    caution: '',
    tools: [],
    instruction: '',
    ...more,
  };
}

function control(id: string, roles: ControlRole[], roadMetres: number, minutes: number): Point {
  const where = { leg: 1, section: 1, firstCarAt: EIGHT_OCLOCK + minutes * 60 };
  return { kind: 'control', id, name: id, roles, roadMetres, allowedSeconds: null, ...where };
}

function stage(id: string, stageMetres: number, minutes: number): Point {
  const where = { leg: 1, section: 1, firstCarAt: EIGHT_OCLOCK + minutes * 60 };
  return { kind: 'stage', id, name: id, stageMetres, gapSeconds: 180, repeatOf: null, ...where };
}

/** Stage of 10 km, Service A of 20 minutes, stage of 20 km, Service B of 10 minutes, finish. */
export const SMALL_ITINERARY: Itinerary = {
  timeZone: 'UTC',
  roadTimedFrom: 'stageStart',
  startBlocks: [],
  points: [
    control('TC0', ['start'], 0, 0),
    stage('SS1', 10_000, 13),
    control('TC1A', ['serviceIn'], 5_000, 40),
    control('TC1B', ['serviceOut'], 0, 60),
    stage('SS2', 20_000, 80),
    control('TC2A', ['serviceIn'], 5_000, 120),
    control('TC2B', ['serviceOut'], 0, 130),
    control('TC3', ['finish'], 5_000, 150),
  ],
};

export function entryOf(more: Partial<EntryReplica> = {}): EntryReplica {
  const car = { carId: 'car', name: 'Blue one', drive: 'four' as const, surface: 'gravel' as const };
  const cards = [cardOf(NUTS, { needsSignature: true }), cardOf(OIL, { people: 1, seconds: 120 })];
  return {
    entryId: CAR,
    car,
    carNumber: '14',
    startPosition: 1,
    positionsBySection: {},
    people: 2,
    cards,
    carried: {},
    ...more,
  };
}

export function replicaOf(me: string = MIA, more: Partial<EventReplica> = {}): EventReplica {
  return {
    eventId: 'event',
    name: 'Small event',
    clockOffsetSeconds: 0,
    serverTime: EIGHT_OCLOCK * 1000,
    itinerary: SMALL_ITINERARY,
    itineraryNumber: 1,
    itineraryText: {
      source: '',
      timeZone: 'UTC',
      startsOn: '2026-06-13',
      roadTimedFrom: 'stageStart',
      startIntervalSeconds: 60,
      printedFor: 'positionOne',
      defaultGapSeconds: 180,
    },
    penaltyRules: DEFAULT_PENALTY_RULES,
    plannedConditions: {},
    tyreAllowance: null,
    entries: [entryOf()],
    people: [
      { personId: MIA, name: 'Mia', initials: 'M', membership: null },
      { personId: KAI, name: 'Kai', initials: 'K', membership: null },
    ],
    me: { personId: me, role: 'mechanic' },
    lastSeq: 0,
    ...more,
  };
}

const NO_CONNECTION: Answer<never> = {
  ok: false,
  lost: true,
  problem: { code: 'unexpected', message: 'The server cannot be reached.', fields: [] },
};

/** Keeps one log, as the server does, by the same rules; each phone gets a client of its own. */
export class FakeServer {
  state: WorkState = emptyState;
  log: LogEntry[] = [];
  /** What was pushed, request by request. */
  requests: ActionId[][] = [];
  /** Who is signed in on the phone that asks, where that is not the one its client was made for. */
  signedIn: string | null = null;
  /** Every next answer instead of the right one; null: answers as it should. */
  failing: 'lost' | 'lostAfterTaking' | Problem | null = null;
  pageSize = 500;
  /** Whether the stream brings what is new, or only says how far the log has grown. */
  tellsEntries = false;
  private readonly answers = new Map<ActionId, { action: PushedAction; result: PushResult }>();
  private readonly streams = new Set<LiveHearing>();

  clientOf(me: string): WorkClient {
    return {
      getReplica: async () => this.failure() ?? { ok: true, value: replicaOf(this.signedIn ?? me) },
      pull: async (since) => {
        const entries = this.log.filter((entry) => entry.seq > since).slice(0, this.pageSize);
        return this.failure() ?? { ok: true, value: { entries, lastSeq: this.log.length } };
      },
      push: async (actions, enteredBy) =>
        this.refusalOf(enteredBy, this.signedIn ?? me) ??
        this.push(structuredClone([...actions]), this.signedIn ?? me),
    };
  }

  readonly openLive: OpenLive = (hearing) => {
    if (this.failing || !this.mayOpen()) {
      queueMicrotask(() => hearing.lost());
      return () => undefined;
    }
    this.streams.add(hearing);
    queueMicrotask(() => {
      hearing.opened();
      hearing.seq(0);
    });
    return () => this.streams.delete(hearing);
  };

  /** What was answered to an action, if it has come. */
  answerTo(actionId: ActionId): PushResult | null {
    return this.answers.get(actionId)?.result ?? null;
  }

  mayOpen(): boolean {
    return true;
  }

  cutStreams(): void {
    const cut = [...this.streams];
    this.streams.clear();
    for (const hearing of cut) hearing.lost();
  }

  private refusalOf(enteredBy: PersonId, me: PersonId): Answer<never> | null {
    if (enteredBy === me) return null;
    const problem = { code: 'notAllowed' as const, message: 'Someone else entered this.', fields: [] };
    return { ok: false, lost: false, problem };
  }

  private failure(): Answer<never> | null {
    if (this.failing === null) return null;
    if (typeof this.failing === 'string') return NO_CONNECTION;
    return { ok: false, lost: false, problem: this.failing };
  }

  private push(actions: PushedAction[], me: string): Answer<{ results: PushResult[]; lastSeq: number }> {
    this.requests.push(actions.map((action) => action.actionId));
    if (this.failing === 'lostAfterTaking') {
      this.failing = null;
      this.takeAll(actions, me);
      return NO_CONNECTION;
    }
    const failure = this.failure();
    if (failure) return failure;
    return { ok: true, value: { results: this.takeAll(actions, me), lastSeq: this.log.length } };
  }

  private takeAll(actions: PushedAction[], me: string): PushResult[] {
    const known = this.log.length;
    const results = actions.map((action) => this.take(action, me));
    for (const hearing of this.streams) {
      if (this.tellsEntries) hearing.entries(this.log.slice(known));
      hearing.seq(this.log.length);
    }
    return results;
  }

  private take(action: PushedAction, me: string): PushResult {
    const { actionId } = action;
    const before = this.answers.get(actionId);
    if (before) {
      if (!sameContent(before.action, action)) throw new Error('FakeServer: same id, other content');
      return { ...before.result, repeated: true };
    }
    const outcome = decideLocally(this.state, action, replicaOf(me));
    const bare = { actionId, code: null, personId: null, repeated: false };
    const entries = outcome.ok ? numberEntries(outcome.entries, this.log.length + 1, 5_000) : [];
    this.log.push(...entries);
    this.state = applyAll(this.state, entries);
    const flagged = entries.some((entry) => entry.flags.length > 0);
    const result: PushResult = outcome.ok
      ? {
          ...bare,
          status: 'accepted',
          sentence: flagged ? 'Kept. Note: …' : 'Kept.',
          seqs: entries.map((e) => e.seq),
        }
      : { ...bare, status: 'refused', sentence: outcome.sentence, seqs: [] };
    this.answers.set(actionId, { action, result });
    return result;
  }
}

/** What a device keeps of its outbox, under all its tabs. */
export class FakeDisk {
  readonly waiting = new Map<string, WaitingAction>();
  readonly notices = new Map<string, WorkNotice>();
  readonly told = new Map<string, number>();
  device: KnownDevice | null = null;
  /** True: no room, so every write fails. */
  isFull = false;
  readonly tabs = new Set<(change: BoxChange, from: FakeBox) => void>();
}

/** One tab's way to the disk. */
export class FakeBox implements OutboxBox {
  constructor(readonly disk = new FakeDisk()) {}

  async device(): Promise<KnownDevice> {
    return this.findDevice();
  }

  async read(place: Place, isKnown: (id: ActionId) => boolean) {
    const here = ({ place: of }: { place: Place }) => of === place;
    const waiting = [...this.disk.waiting.values()].filter(here);
    return structuredClone({
      ids: waiting.map(({ action }) => action.actionId),
      fresh: waiting.filter(({ action }) => !isKnown(action.actionId)),
      notices: [...this.disk.notices.values()].filter(here),
    });
  }

  async readAll() {
    const { waiting, notices } = this.disk;
    return structuredClone({ waiting: [...waiting.values()], notices: [...notices.values()] });
  }

  async keep(waiting: WaitingAction, fixed: boolean): Promise<WaitingAction> {
    this.needRoom();
    const device = this.findDevice();
    const { action } = waiting;
    const deviceSeq = fixed ? action.deviceSeq : Math.max(action.deviceSeq, device.lastSeq + 1);
    this.disk.device = { ...device, lastSeq: Math.max(device.lastSeq, deviceSeq) };
    const kept = { ...waiting, action: { ...action, deviceSeq } };
    this.disk.waiting.set(action.actionId, structuredClone(kept));
    this.tellOthers({ place: kept.place, added: kept });
    return kept;
  }

  async settle(place: Place, { ids, notices }: Settled): Promise<void> {
    this.needRoom();
    for (const id of ids) this.disk.waiting.delete(id);
    for (const notice of notices) this.disk.notices.set(notice.id, structuredClone(notice));
    this.tellOthers({ place, settled: ids, noticed: notices.length > 0 });
  }

  async tell(place: Place, owner: PersonId, seq: number, notices: readonly ToldNotice[]): Promise<void> {
    this.needRoom();
    const told = this.disk.told.get(place + owner) ?? 0;
    for (const each of notices) {
      if (each.seq > told) this.disk.notices.set(each.notice.id, structuredClone(each.notice));
    }
    this.disk.told.set(place + owner, Math.max(told, seq));
    this.tellOthers({ place, noticed: true });
  }

  async dismiss(place: Place, noticeId: string): Promise<void> {
    this.disk.notices.delete(noticeId);
    this.tellOthers({ place, noticed: true });
  }

  async clear(): Promise<void> {
    this.disk.waiting.clear();
    this.disk.notices.clear();
  }

  hear(listener: (change: BoxChange) => void): () => void {
    const hear = (change: BoxChange, from: FakeBox) => {
      if (from !== this) listener(change);
    };
    this.disk.tabs.add(hear);
    return () => this.disk.tabs.delete(hear);
  }

  private findDevice(): KnownDevice {
    this.disk.device ??= { deviceId: nextId(), lastSeq: 0 };
    return this.disk.device;
  }

  private needRoom(): void {
    if (this.disk.isFull) throw new Error('QuotaExceededError');
  }

  private tellOthers(change: BoxChange): void {
    for (const hear of this.disk.tabs) hear(change, this);
  }
}

/** Tabs of one device take turns in the order in which they ask. */
export function fakeTurns(): TakeTurn {
  let last: Promise<void> = Promise.resolve();
  return (_place, work, signal) => {
    const mine = last.then(() => (signal.aborted ? undefined : work({ holds: async () => true })));
    last = mine.catch(() => undefined);
    return mine;
  };
}

/** A device's own copy of one event. */
export class FakeShelf implements EventShelf {
  private replica: { replica: EventReplica; receivedAt: number } | null = null;
  private entries: LogEntry[] = [];

  async read() {
    return this.replica && structuredClone({ ...this.replica, entries: this.entries });
  }

  keepReplica(replica: EventReplica, receivedAt: number): void {
    this.replica = { replica, receivedAt };
  }

  keepEntries(entries: readonly LogEntry[]): void {
    this.entries.push(...entries);
  }

  dropEntries(): void {
    this.entries = [];
  }
}

let ids = 0;

/** Ids that tell the order they were made in. */
export function nextId(): string {
  ids += 1;
  return `00000000-0000-4000-9000-${String(ids).padStart(12, '0')}`;
}
