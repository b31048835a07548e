import { randomUUID } from 'node:crypto';
import { ACTION_VERSION } from '@halfshaft/worklog';
import type { QueryClient } from '@tanstack/react-query';
import type { BoxChange, OutboxBox } from '../../../apps/web/features/work/outbox-box';
import type { WaitingAction } from '../../../apps/web/features/work/waiting-action';
import type { WorkStore } from '../../../apps/web/features/work/work-store';
import { Channels, Locks } from './browser-parts';
import { Life } from './life';
import type { Network } from './network';
import type { PhoneCode } from './phone-code';
import type { Traffic } from './traffic';

export interface SwarmPerson {
  personId: string;
  name: string;
  cookie: string;
}

interface Tab {
  life: Life;
  store: WorkStore;
}

export interface PhoneParts {
  code: PhoneCode;
  network: Network;
  traffic: Traffic;
  teamId: string;
  eventId: string;
  /** By https: locks, and tabs that tell each other. By plain http neither, as in the van. */
  isSecure: boolean;
  now: () => number;
  /** The phone holds it now, whatever becomes of the page. */
  onKept: (actionId: string) => void;
}

/** Only the bay is open here, so no other part of the page could have asked already. */
const ASKS_EACH_TIME = {
  fetchQuery: ({ queryFn }: { queryFn: () => Promise<unknown> }) => queryFn(),
} as unknown as Pick<QueryClient, 'fetchQuery'>;

/** A phone in one person's hand after the other: its tabs come and go, its database stays. */
export class Phone {
  tabs: Tab[] = [];
  skewMillis = 0;
  readonly network: Network;
  readonly box: OutboxBox;
  private readonly channels = new Channels<BoxChange>();
  private readonly locks = new Locks();

  constructor(
    private readonly parts: PhoneParts,
    public person: SwarmPerson,
  ) {
    this.network = parts.network;
    this.network.cookie = person.cookie;
    this.box = parts.code.browserBox(this.channels.open());
    this.openTab();
  }

  now(): number {
    return this.parts.now() + this.skewMillis;
  }

  openTab(): void {
    const { code, network, traffic, teamId, eventId, isSecure, onKept } = this.parts;
    const life = new Life(traffic);
    const channel = isSecure ? this.channels : new Channels<BoxChange>();
    const real = code.browserBox(channel.open());
    const keep: OutboxBox['keep'] = async (waiting, fixed) => {
      const kept = await real.keep(waiting, fixed);
      onKept(kept.action.actionId);
      return kept;
    };
    const place = this.place;
    const takeTurn = isSecure
      ? code.turnByLock(this.locks.of(life.ended))
      : code.turnByLease(randomUUID(), () => this.now());
    const pageAnswers = { client: network.openClient(), queryClient: ASKS_EACH_TIME };
    const around = {
      client: life.bind(code.workClientOf(teamId, eventId, pageAnswers)),
      openLive: life.bind({ open: network.openLive.bind(network, teamId, eventId) }).open,
      box: life.bind({ ...real, keep }),
      takeTurn,
      shelf: life.bind(code.browserShelf(place)),
      now: () => this.now(),
      newId: () => randomUUID(),
      later: (run: () => void) => void setImmediate(run),
    };
    const store = new code.WorkStore(around, place);
    store.start();
    this.tabs.push({ life, store });
  }

  /** No farewell: what the tab had not written down is gone. */
  crash(tab: Tab): void {
    tab.life.crash();
    tab.store.stop();
    this.tabs = this.tabs.filter((each) => each !== tab);
  }

  restart(): void {
    for (const tab of this.tabs) this.crash(tab);
    this.openTab();
  }

  /** Somebody else signs in. Where nobody had signed out before, the pages find out a moment later. */
  async passTo(person: SwarmPerson, signedOut: boolean): Promise<void> {
    this.person = person;
    this.network.cookie = person.cookie;
    if (!signedOut) {
      this.restart();
      await this.parts.traffic.quiet();
    }
    for (const tab of this.tabs) this.crash(tab);
    await this.parts.code.wipeCopies();
    this.openTab();
  }

  /** What the app before this one left waiting; then the phone is updated. */
  async update(entryId: string): Promise<WaitingAction> {
    for (const tab of this.tabs) this.crash(tab);
    const { deviceId, lastSeq } = await this.box.device();
    const { personId, name } = this.person;
    const args = { snagId: randomUUID(), entryId, serviceId: 'A', place: 'RR', words: 'from the app before' };
    const stamp = { deviceId, deviceSeq: lastSeq + 1, deviceTime: this.now(), version: ACTION_VERSION - 1 };
    const action = { kind: 'raiseSnag', args, actionId: randomUUID(), by: personId, ...stamp };
    const whose = { owner: personId, ownerName: name, eventName: 'Swarm', place: this.place };
    const kept = await this.box.keep({ action, words: args.words, ...whose }, false);
    this.openTab();
    return kept;
  }

  mend(): void {
    this.network.isCut = false;
    this.retry();
  }

  retry(): void {
    for (const { store } of this.tabs) store.retry();
  }

  /** Ends all of it, and empties the phone for the next event. */
  async wipe(): Promise<void> {
    for (const tab of this.tabs) this.crash(tab);
    await this.box.clear();
    await this.parts.code.wipeCopies();
  }

  private get place(): string {
    return `${this.parts.teamId}.${this.parts.eventId}`;
  }
}
