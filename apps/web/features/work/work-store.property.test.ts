import type { ActionId, PersonId } from '@halfshaft/worklog';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { noShelf } from './event-shelf';
import {
  CAR,
  FakeBox,
  FakeDisk,
  FakeServer,
  fakeTurns,
  KAI,
  MIA,
  NUTS,
  nextId,
  OIL,
  replicaOf,
  taskAt,
} from './fixtures';
import type { TakeTurn } from './take-turn';
import type { Answer, WorkClient } from './work-client';
import { WorkStore } from './work-store';

const PHONES = 2;
const PEOPLE: readonly PersonId[] = [MIA, KAI];
const LONG = 120_000;

/** What may happen to a phone. A tab acts, its network goes or comes, an answer is lost, it crashes, its disk fills … */
const step = fc.record({
  phone: fc.nat({ max: PHONES - 1 }),
  what: fc.constantFrom(
    ...(['act', 'act', 'act', 'act', 'act', 'cut', 'mend', 'loseAnswer', 'crash', 'secondTab'] as const),
    ...(['fill', 'empty', 'change', 'wait', 'clockBack'] as const),
  ),
  pick: fc.nat({ max: 1000 }),
});
type Step = typeof step extends fc.Arbitrary<infer Value> ? Value : never;

interface Made {
  id: ActionId;
  owner: PersonId;
  phone: number;
}

/** Phones with their disks and tabs, one server, and all that was ever tapped. */
class World {
  readonly server = new FakeServer();
  readonly phones = Array.from({ length: PHONES }, () => new Phone(this.server));
  readonly made: Made[] = [];

  async run({ phone: at, what, pick }: Step): Promise<void> {
    const phone = this.phones[at];
    if (!phone) return;
    if (what === 'act') this.act(phone, at, pick);
    else if (what === 'cut') phone.isCut = true;
    else if (what === 'mend') phone.mend();
    else if (what === 'loseAnswer') phone.losesAnswer = true;
    else if (what === 'secondTab' && phone.tabs.length < 2) phone.openTab();
    else if (what === 'fill') phone.disk.isFull = true;
    else if (what === 'empty') phone.disk.isFull = false;
    else if (what === 'clockBack') phone.skew -= 3_600_000;
    else if (what === 'crash') await this.crash(phone, pick);
    else if (what === 'change') await this.changePerson(phone, at);
    await vi.advanceTimersByTimeAsync(what === 'wait' ? 20_000 : pick % 700);
  }

  private act(phone: Phone, at: number, pick: number): void {
    const tab = phone.tabs[pick % phone.tabs.length];
    if (!tab || tab.getSnapshot().replica === null) return;
    const by = PEOPLE[pick % PEOPLE.length] ?? MIA;
    const task = taskAt(pick % 3 === 0 ? NUTS : OIL);
    const done = [
      () => tab.act('takeTask', { task }, by),
      () => tab.act('releaseTask', { task }, by),
      () => tab.act('closeTask', { task, findings: [], readings: [] }, by),
      () => tab.act('reopenTask', { task, reason: 'looks wrong' }, by),
      () =>
        tab.act('confirmStage', { entryId: CAR, stageId: 'SS1', driven: pick % 2 === 0, conditions: {} }, by),
    ][pick % 5]?.();
    if (done?.ok) this.made.push({ id: done.actionId, owner: phone.person, phone: at });
  }

  /** Only what the page had said it could not keep may be gone. */
  private async crash(phone: Phone, pick: number): Promise<void> {
    await vi.advanceTimersByTimeAsync(0);
    const [tab] = phone.tabs.splice(pick % phone.tabs.length, 1);
    const unkept = tab?.getSnapshot().unkept ?? 0;
    tab?.stop();
    const lost = this.made.filter(
      ({ id, phone: at }) =>
        this.phones[at] === phone &&
        !phone.disk.waiting.has(id) &&
        !this.server.answerTo(id) &&
        !phone.isLoose(id),
    );
    expect(lost.length).toBeLessThanOrEqual(unkept);
    for (const each of lost) this.made.splice(this.made.indexOf(each), 1);
    if (phone.tabs.length === 0) phone.openTab();
  }

  /** Signing in as somebody else needs a network and begins all tabs anew. */
  private async changePerson(phone: Phone, at: number): Promise<void> {
    if (phone.isCut) return;
    while (phone.tabs.length > 1) await this.crash(phone, 0);
    phone.person = PEOPLE[(PEOPLE.indexOf(phone.person) + 1) % PEOPLE.length] ?? MIA;
    await this.crash(phone, at);
  }

  /** Everything works again, and each person signs in once more on each phone. */
  async comeToRest(): Promise<void> {
    for (const phone of this.phones) {
      phone.disk.isFull = false;
      phone.mend();
    }
    await vi.advanceTimersByTimeAsync(LONG);
    for (let round = 0; round < PEOPLE.length; round += 1) {
      for (const [at, phone] of this.phones.entries()) await this.changePerson(phone, at);
      await vi.advanceTimersByTimeAsync(LONG);
    }
  }
}

class Phone {
  readonly disk = new FakeDisk();
  readonly tabs: WorkStore[] = [];
  person: PersonId = MIA;
  isCut = false;
  losesAnswer = false;
  skew = 0;
  private readonly takeTurn: TakeTurn = fakeTurns();

  constructor(private readonly server: FakeServer) {
    this.openTab();
  }

  openTab(): void {
    const around = {
      client: this.clientOf(this.person),
      openLive: this.server.openLive,
      box: new FakeBox(this.disk),
      takeTurn: this.takeTurn,
      shelf: {
        ...noShelf,
        read: async () => ({ replica: replicaOf(this.person), receivedAt: 0, entries: [] }),
      },
      now: () => Date.now() + this.skew,
      newId: nextId,
      later: (run: () => void) => void setTimeout(run, 0),
    };
    const store = new WorkStore(around, 'team.event');
    store.start();
    this.tabs.push(store);
  }

  mend(): void {
    this.isCut = false;
    for (const tab of this.tabs) tab.retry();
  }

  /** Some tab that is still open holds it. */
  isLoose(id: ActionId): boolean {
    return this.tabs.some((tab) =>
      tab.getSnapshot().entries.some((entry) => entry.actionId === id && entry.serverTime === null),
    );
  }

  private clientOf(me: PersonId): WorkClient {
    const client = this.server.clientOf(me);
    const problem = { code: 'unexpected' as const, message: 'Cut.', fields: [] };
    const cut: Answer<never> = { ok: false, lost: true, problem };
    return {
      getReplica: async () => (this.isCut ? cut : client.getReplica()),
      pull: async (since) => (this.isCut ? cut : client.pull(since)),
      push: async (actions, enteredBy) => {
        if (this.isCut) return cut;
        const answer = await client.push(actions, enteredBy);
        if (!this.losesAnswer) return answer;
        this.losesAnswer = false;
        return cut;
      },
    };
  }
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

it('loses nothing, sends nothing twice and nothing under another name, whatever happens to the phones', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 5, maxLength: 40 }), fc.boolean(), async (steps, tells) => {
      const world = new World();
      world.server.tellsEntries = tells;
      await vi.advanceTimersByTimeAsync(0);
      for (const each of steps) await world.run(each);
      await world.comeToRest();
      expectAllArrived(world);
      for (const { tabs } of world.phones) for (const tab of tabs) tab.stop();
      vi.clearAllTimers();
    }),
    { numRuns: 40 },
  );
}, 60_000);

function expectAllArrived({ server, made, phones }: World): void {
  for (const { id, owner, phone } of made) {
    const answer = server.answerTo(id);
    expect(answer, 'an action never came').not.toBeNull();
    const entries = server.log.filter((entry) => entry.actionId === id);
    expect(entries.every(({ enteredBy }) => enteredBy === owner)).toBe(true);
    if (answer?.status === 'refused') {
      expect(entries).toEqual([]);
      expect(phones[phone]?.disk.notices.get(id)).toMatchObject({ owner, kind: 'refused' });
    } else expect(entries.map(({ seq }) => seq)).toEqual(answer?.seqs);
  }
  for (const { disk, tabs } of phones) {
    expect(disk.waiting.size).toBe(0);
    for (const tab of tabs) {
      expect(tab.getSnapshot()).toMatchObject({ waiting: 0, unkept: 0, problem: null });
      expect([...tab.getSnapshot().state.tasks]).toEqual([...server.state.tasks]);
      expect([...tab.getSnapshot().state.stages]).toEqual([...server.state.stages]);
    }
  }
}
