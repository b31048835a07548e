import { ACTION_VERSION, taskIdOf } from '@halfshaft/worklog';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type EventShelf, noShelf } from './event-shelf';
import {
  CAR,
  FakeBox,
  FakeDisk,
  FakeServer,
  FakeShelf,
  fakeTurns,
  KAI,
  MIA,
  NUTS,
  nextId,
  OIL,
  taskAt,
} from './fixtures';
import type { TakeTurn } from './take-turn';
import type { Answer, WorkClient } from './work-client';
import type { WorkSnapshot } from './work-snapshot';
import { WorkStore } from './work-store';

const takeNuts = { task: taskAt(NUTS) };
const closeNuts = { task: taskAt(NUTS), findings: [], readings: [] };
const closeOil = { task: taskAt(OIL), findings: [], readings: [] };

function open(
  server: FakeServer,
  disk: FakeDisk = new FakeDisk(),
  me: string = MIA,
  shelf: EventShelf = noShelf,
  client: WorkClient = server.clientOf(me),
): WorkStore {
  const around = {
    client,
    openLive: server.openLive,
    box: new FakeBox(disk),
    takeTurn: turnsOf(disk),
    shelf,
    now: () => Date.now(),
    newId: nextId,
    later: (run: () => void) => void setTimeout(run, 0),
  };
  return new WorkStore(around, 'team.event');
}

const turns = new Map<FakeDisk, TakeTurn>();

function turnsOf(disk: FakeDisk): TakeTurn {
  const known = turns.get(disk) ?? fakeTurns();
  turns.set(disk, known);
  return known;
}

/** Lets everything run that waits on an answer, not on a clock. */
const settle = () => vi.advanceTimersByTimeAsync(0);

async function openAndStart(...parts: Parameters<typeof open>): Promise<WorkStore> {
  const store = open(...parts);
  store.start();
  await settle();
  return store;
}

function task(store: WorkStore, cardId: string) {
  return store.getSnapshot().state.tasks.get(taskIdOf(taskAt(cardId)));
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('WorkStore', () => {
  it('is live once the event and all pages of its log have come', async () => {
    const server = new FakeServer();
    const first = await openAndStart(server);
    first.act('takeTask', takeNuts, MIA);
    first.act('closeTask', closeNuts, MIA);
    first.act('closeTask', closeOil, MIA);
    await settle();
    server.pageSize = 1;
    const second = open(server, new FakeDisk(), KAI);
    expect(second.getSnapshot().status).toBe('loading');
    second.start();
    await settle();
    expect(second.getSnapshot()).toMatchObject({ status: 'live', confirmedSeq: 3, waiting: 0 });
    expect(task(second, OIL)).toMatchObject({ state: 'done', doneBy: MIA });
  });

  it('shows an action at once, and confirmed when the server has answered', async () => {
    const server = new FakeServer();
    const store = await openAndStart(server);
    const seen: WorkSnapshot[] = [];
    store.subscribe(() => seen.push(store.getSnapshot()));
    expect(store.act('takeTask', takeNuts, MIA).ok).toBe(true);
    await settle();
    expect(seen[0]).toMatchObject({ waiting: 1, confirmedSeq: 0 });
    expect(seen[0]?.state.tasks.get(taskIdOf(taskAt(NUTS)))).toMatchObject({ state: 'claimed', holder: MIA });
    expect(seen[0]?.entries[0]).toMatchObject({ seq: 1, serverTime: null });
    expect(store.getSnapshot()).toMatchObject({ waiting: 0, confirmedSeq: 1 });
    expect(store.getSnapshot().entries).toHaveLength(1);
    expect(store.getSnapshot().entries[0]?.serverTime).toBe(5_000);
  });

  it('never shows a task as open again between the answer and the pull', async () => {
    const server = new FakeServer();
    const store = await openAndStart(server);
    const seen = new Set<string | undefined>();
    store.subscribe(() => seen.add(task(store, NUTS)?.state));
    store.act('takeTask', takeNuts, MIA);
    await settle();
    expect([...seen]).toEqual(['claimed']);
  });

  it('tells a refusal that can be known here at once and sends nothing', async () => {
    const server = new FakeServer();
    const store = await openAndStart(server);
    store.act('takeTask', takeNuts, KAI);
    const result = store.act('takeTask', takeNuts, MIA);
    expect(result).toEqual({ ok: false, sentence: 'Kai has it already. Ask Kai, or pick another.' });
    await settle();
    expect(store.getSnapshot().notices).toMatchObject([
      { kind: 'refused', sentence: expect.stringContaining('Kai') },
    ]);
    await settle();
    expect(server.requests.flat()).toHaveLength(1);
  });

  it('takes what the stream brings and asks only where something is missing', async () => {
    const server = new FakeServer();
    server.tellsEntries = true;
    const asked: number[] = [];
    const client = server.clientOf(KAI);
    const listening = {
      ...client,
      pull: (since: number) => {
        asked.push(since);
        return client.pull(since);
      },
    };
    const kai = open(server, new FakeDisk(), KAI, noShelf, listening);
    kai.start();
    const mia = await openAndStart(server);
    await settle();
    const asWas = asked.length;
    mia.act('takeTask', takeNuts, MIA);
    await settle();
    expect(task(kai, NUTS)).toMatchObject({ state: 'claimed', holder: MIA });
    expect(asked).toHaveLength(asWas);

    server.tellsEntries = false;
    mia.act('releaseTask', takeNuts, MIA);
    await settle();
    expect(task(kai, NUTS)?.state).toBe('open');
    expect(asked.slice(asWas)).toEqual([1]);
  });

  it('shows what others did without being asked', async () => {
    const server = new FakeServer();
    const mia = await openAndStart(server);
    const kai = await openAndStart(server, new FakeDisk(), KAI);
    kai.act('takeTask', takeNuts, KAI);
    await settle();
    expect(task(mia, NUTS)?.holder).toBe(KAI);
  });

  it('gives a task that two take at once to one, and tells the other who has it until it is dismissed', async () => {
    const server = new FakeServer();
    const mia = await openAndStart(server);
    const kai = await openAndStart(server, new FakeDisk(), KAI);
    const kaiSaw = new Set<string | null | undefined>();
    kai.subscribe(() => kaiSaw.add(task(kai, NUTS)?.holder));
    mia.act('takeTask', takeNuts, MIA);
    kai.act('takeTask', takeNuts, KAI);
    await settle();
    expect([...kaiSaw]).toEqual([KAI, MIA]);
    expect(task(mia, NUTS)?.holder).toBe(MIA);
    expect(task(kai, NUTS)?.holder).toBe(MIA);
    const [notice] = kai.getSnapshot().notices;
    expect(notice?.sentence).toBe('Mia has it already. Ask Mia, or pick another.');
    expect(kai.getSnapshot().waiting).toBe(0);
    kai.dismiss(notice?.id ?? '');
    await settle();
    expect(kai.getSnapshot().notices).toEqual([]);
  });

  it('tells what stands against a fact that was kept', async () => {
    const server = new FakeServer();
    const mia = await openAndStart(server);
    const kai = await openAndStart(server, new FakeDisk(), KAI);
    mia.act('closeTask', closeNuts, MIA);
    kai.act('closeTask', closeNuts, KAI);
    await settle();
    expect(kai.getSnapshot().notices).toMatchObject([{ kind: 'kept', sentence: 'Kept. Note: …' }]);
    expect(task(mia, NUTS)).toMatchObject({ doneBy: MIA, alsoDoneBy: [KAI] });
  });
});

describe('WorkStore without a connection', () => {
  it('keeps actions, tries again after growing pauses, and sends them in order', async () => {
    const server = new FakeServer();
    const store = await openAndStart(server);
    server.failing = 'lost';
    store.act('takeTask', takeNuts, MIA);
    store.act('closeTask', closeNuts, MIA);
    await settle();
    expect(store.getSnapshot()).toMatchObject({ status: 'offline', waiting: 2 });
    expect(task(store, NUTS)?.state).toBe('done');
    await vi.advanceTimersByTimeAsync(999);
    const triesBefore = server.requests.length;
    await vi.advanceTimersByTimeAsync(1);
    expect(server.requests).toHaveLength(triesBefore + 1);
    await vi.advanceTimersByTimeAsync(1_999);
    expect(server.requests).toHaveLength(triesBefore + 1);
    server.failing = null;
    await vi.advanceTimersByTimeAsync(1);
    expect(store.getSnapshot()).toMatchObject({ waiting: 0, notices: [] });
    expect(server.log.map((entry) => entry.body.kind)).toEqual(['claimed', 'done']);
  });

  it('sends at once when the network is back', async () => {
    const server = new FakeServer();
    const store = await openAndStart(server);
    server.failing = 'lost';
    store.act('takeTask', takeNuts, MIA);
    await vi.advanceTimersByTimeAsync(60_000);
    server.failing = null;
    store.retry();
    await settle();
    expect(store.getSnapshot()).toMatchObject({ status: 'live', waiting: 0 });
  });

  it('sends although the network came back while the turn after a lost request was still being given back', async () => {
    const server = new FakeServer();
    vi.spyOn(server, 'mayOpen').mockReturnValue(false);
    const disk = new FakeDisk();
    let giveBack: () => void = () => undefined;
    turns.set(disk, async (_place, work) => {
      await work({ holds: async () => true });
      await new Promise<void>((given) => {
        giveBack = given;
      });
    });
    const store = await openAndStart(server, disk);
    server.failing = 'lost';
    store.act('takeTask', takeNuts, MIA);
    await settle();
    expect(server.requests).toHaveLength(1);
    server.failing = null;
    store.retry();
    giveBack();
    await settle();
    expect(store.getSnapshot()).toMatchObject({ waiting: 0, notices: [] });
    expect(server.log.map((entry) => entry.body.kind)).toEqual(['claimed']);
  });

  it('takes the same answer for an action that was taken although its answer was lost', async () => {
    const server = new FakeServer();
    const store = await openAndStart(server);
    server.failing = 'lostAfterTaking';
    const result = store.act('takeTask', takeNuts, MIA);
    await vi.advanceTimersByTimeAsync(1_000);
    const id = result.ok ? result.actionId : '';
    expect(server.requests).toEqual([[id], [id]]);
    expect(server.log).toHaveLength(1);
    expect(store.getSnapshot()).toMatchObject({ waiting: 0, notices: [] });
    expect(store.getSnapshot().entries).toHaveLength(1);
  });

  it('asks at intervals while the stream is down, and opens it again', async () => {
    const server = new FakeServer();
    const store = await openAndStart(server);
    const reopen = vi.spyOn(server, 'mayOpen').mockReturnValue(false);
    server.cutStreams();
    expect(store.getSnapshot().status).toBe('behind');
    const kai = await openAndStart(server, new FakeDisk(), KAI);
    kai.act('takeTask', takeNuts, KAI);
    await vi.advanceTimersByTimeAsync(19_000);
    expect(task(store, NUTS)).toBeUndefined();
    await vi.advanceTimersByTimeAsync(1_000);
    expect(task(store, NUTS)?.holder).toBe(KAI);
    expect(store.getSnapshot().status).toBe('behind');
    reopen.mockReturnValue(true);
    await vi.advanceTimersByTimeAsync(30_000);
    expect(store.getSnapshot().status).toBe('live');
  });
});

describe('WorkStore after a reload', () => {
  it('still holds what had not been sent, shows it and sends it', async () => {
    const server = new FakeServer();
    const disk = new FakeDisk();
    const before = await openAndStart(server, disk);
    server.failing = 'lost';
    before.act('takeTask', takeNuts, MIA);
    await settle();
    before.stop();
    server.failing = null;

    const after = open(server, disk);
    const waited: number[] = [];
    after.subscribe(() => waited.push(after.getSnapshot().waiting));
    after.start();
    await settle();
    expect(waited[0]).toBe(1);
    expect(after.getSnapshot()).toMatchObject({ waiting: 0, status: 'live' });
    expect(server.state.tasks.get(taskIdOf(taskAt(NUTS)))?.holder).toBe(MIA);
  });

  it('goes on as the same device, with numbers that were never used', async () => {
    const server = new FakeServer();
    const disk = new FakeDisk();
    const before = await openAndStart(server, disk);
    before.act('takeTask', takeNuts, MIA);
    await settle();
    before.stop();
    const after = await openAndStart(server, disk);
    after.act('closeTask', closeNuts, MIA);
    await settle();
    expect(new Set(server.log.map((entry) => entry.deviceId))).toEqual(new Set([before.deviceId]));
    expect(disk.device).toMatchObject({ deviceId: before.deviceId, lastSeq: 2 });
  });

  it('still tells a refusal nobody has dismissed', async () => {
    const server = new FakeServer();
    const disk = new FakeDisk();
    const mia = await openAndStart(server, disk);
    mia.act('takeTask', takeNuts, KAI);
    mia.act('takeTask', takeNuts, MIA);
    await settle();
    mia.stop();
    expect((await openAndStart(server, disk)).getSnapshot().notices).toHaveLength(1);
  });

  it('says so when the browser keeps nothing, and sends all the same', async () => {
    const server = new FakeServer();
    const disk = new FakeDisk();
    disk.isFull = true;
    const store = await openAndStart(server, disk);
    server.failing = 'lost';
    store.act('takeTask', takeNuts, MIA);
    store.act('closeTask', closeNuts, MIA);
    await settle();
    expect(store.getSnapshot()).toMatchObject({ unkept: 2, waiting: 2 });
    server.failing = null;
    store.retry();
    await settle();
    expect(server.log).toHaveLength(2);
    expect(store.getSnapshot().waiting).toBe(0);
  });
});

describe('WorkStore when the server says no', () => {
  it('stops at an expired session, loses nothing, and goes on after signing in', async () => {
    const server = new FakeServer();
    const store = await openAndStart(server);
    server.failing = { code: 'signInNeeded', message: 'Your sign-in has run out.', fields: [] };
    store.act('takeTask', takeNuts, MIA);
    await vi.advanceTimersByTimeAsync(15_000);
    expect(store.getSnapshot()).toMatchObject({ waiting: 1, problem: { code: 'signInNeeded' } });
    expect(server.requests).toHaveLength(1);
    server.failing = null;
    store.retry();
    await settle();
    expect(store.getSnapshot()).toMatchObject({ waiting: 0, problem: null, status: 'live' });
  });

  it('goes on after signing in while a request of the sign-in before was still under way', async () => {
    const server = new FakeServer();
    const real = server.clientOf(MIA);
    const problem = { code: 'signInNeeded' as const, message: 'Your sign-in has run out.', fields: [] };
    const answers: (() => void)[] = [];
    const late = () =>
      new Promise<Answer<never>>((answer) => {
        answers.push(() => answer({ ok: false, lost: false, problem }));
      });
    let isOver = false;
    const client: WorkClient = {
      ...real,
      pull: (since) => (isOver ? late() : real.pull(since)),
      push: (actions, enteredBy) => (isOver ? late() : real.push(actions, enteredBy)),
    };
    const store = await openAndStart(server, new FakeDisk(), MIA, noShelf, client);
    const kai = await openAndStart(server, new FakeDisk(), KAI);
    isOver = true;
    store.act('takeTask', takeNuts, MIA);
    kai.act('closeTask', closeOil, KAI);
    await settle();
    expect(answers).toHaveLength(2);
    isOver = false;
    store.retry();
    for (const answer of answers) answer();
    await settle();
    expect(store.getSnapshot()).toMatchObject({ waiting: 0, problem: null, confirmedSeq: 2 });
  });

  it('lets one unreadable action go with a notice, and sends the others', async () => {
    const server = new FakeServer();
    const client = server.clientOf(MIA);
    const problem = { code: 'badInput' as const, message: 'The time is not right.', fields: [] };
    const push: typeof client.push = async (actions, enteredBy) =>
      actions.some((action) => action.kind === 'closeTask')
        ? { ok: false, lost: false, problem }
        : client.push(actions, enteredBy);
    const around = {
      openLive: server.openLive,
      box: new FakeBox(),
      takeTurn: fakeTurns(),
      shelf: noShelf,
      now: () => Date.now(),
      newId: nextId,
      later: (run: () => void) => void setTimeout(run, 0),
    };
    const store = new WorkStore({ ...around, client: { ...client, push } }, 'team.event');
    store.start();
    await settle();
    store.act('closeTask', closeOil, MIA);
    store.act('takeTask', takeNuts, MIA);
    await settle();
    expect(store.getSnapshot()).toMatchObject({ waiting: 0 });
    expect(store.getSnapshot().notices).toMatchObject([{ sentence: 'The time is not right.' }]);
    expect(server.log.map((entry) => entry.body.kind)).toEqual(['claimed']);
  });

  it('says why nothing can be shown when the event is not ours', async () => {
    const server = new FakeServer();
    server.failing = { code: 'unknown', message: 'That does not exist, or it is not yours.', fields: [] };
    const store = await openAndStart(server);
    expect(store.getSnapshot()).toMatchObject({
      status: 'failed',
      problem: { code: 'unknown' },
      replica: null,
    });
  });

  it('comes up by itself when the server was not reached at first', async () => {
    const server = new FakeServer();
    server.failing = 'lost';
    const store = await openAndStart(server);
    expect(store.getSnapshot().status).toBe('failed');
    server.failing = null;
    await vi.advanceTimersByTimeAsync(2_000);
    expect(store.getSnapshot().status).toBe('live');
  });
});

describe('WorkStore in two tabs of one browser', () => {
  it('shows in one tab what waits in the other, and each action is taken once', async () => {
    const server = new FakeServer();
    const disk = new FakeDisk();
    const one = await openAndStart(server, disk);
    const two = await openAndStart(server, disk);
    server.failing = 'lost';
    one.act('takeTask', takeNuts, MIA);
    await settle();
    expect(two.getSnapshot().waiting).toBe(1);
    expect(task(two, NUTS)?.holder).toBe(MIA);
    two.act('closeTask', closeOil, MIA);
    await settle();
    server.failing = null;
    one.retry();
    two.retry();
    await vi.advanceTimersByTimeAsync(60_000);
    for (const tab of [one, two]) expect(tab.getSnapshot()).toMatchObject({ waiting: 0, notices: [] });
    expect(server.log.map((entry) => entry.body.kind)).toEqual(['claimed', 'done']);
    expect(new Set(server.log.map((entry) => entry.deviceId)).size).toBe(1);
  });

  it.each([
    ['a person asks', (store: WorkStore) => store.retry()],
    ['the stream is back', (_: WorkStore, server: FakeServer) => server.cutStreams()],
  ])('sends what a tab that was killed had kept and told nobody, once %s', async (_, happen) => {
    const server = new FakeServer();
    const disk = new FakeDisk();
    const killed = await openAndStart(server, disk);
    const left = await openAndStart(server, disk);
    disk.tabs.clear();
    server.failing = 'lost';
    killed.act('takeTask', takeNuts, MIA);
    await settle();
    killed.stop();
    server.failing = null;
    expect(left.getSnapshot().waiting).toBe(0);
    happen(left, server);
    await vi.advanceTimersByTimeAsync(1_000);
    expect(server.log.map((entry) => entry.body.kind)).toEqual(['claimed']);
    expect(left.getSnapshot()).toMatchObject({ waiting: 0, confirmedSeq: 1 });
  });

  it('opens from what the device kept when the server is not reached, and catches up when it is', async () => {
    const server = new FakeServer();
    const shelf = new FakeShelf();
    const before = await openAndStart(server, new FakeDisk(), MIA, shelf);
    before.act('closeTask', closeOil, MIA);
    await settle();
    before.stop();
    server.failing = 'lost';
    const disk = new FakeDisk();
    const cold = await openAndStart(server, disk, MIA, shelf);
    expect(cold.getSnapshot()).toMatchObject({ status: 'offline', confirmedSeq: 1, waiting: 0 });
    expect(task(cold, OIL)).toMatchObject({ state: 'done', doneBy: MIA });
    expect(cold.act('takeTask', takeNuts, MIA).ok).toBe(true);
    await settle();
    expect(task(cold, NUTS)).toMatchObject({ state: 'claimed', holder: MIA });
    cold.stop();
    server.failing = null;
    const again = await openAndStart(server, disk, MIA, shelf);
    await settle();
    expect(again.getSnapshot()).toMatchObject({ status: 'live', confirmedSeq: 2, waiting: 0 });
  });

  it('lets go of a kept log that the server no longer has', async () => {
    const server = new FakeServer();
    const shelf = new FakeShelf();
    const before = await openAndStart(server, new FakeDisk(), MIA, shelf);
    before.act('closeTask', closeOil, MIA);
    before.act('takeTask', takeNuts, MIA);
    await settle();
    before.stop();
    const restored = new FakeServer();
    const store = await openAndStart(restored, new FakeDisk(), MIA, shelf);
    expect(store.getSnapshot()).toMatchObject({ confirmedSeq: 0 });
    expect(task(store, OIL)).toBeUndefined();
    expect((await shelf.read())?.entries).toEqual([]);
  });
});

describe('WorkStore on a shared phone', () => {
  it('sends what one person entered under that person only, and tells the next one that it waits', async () => {
    const server = new FakeServer();
    const disk = new FakeDisk();
    const mia = await openAndStart(server, disk);
    server.failing = 'lost';
    mia.act('takeTask', takeNuts, MIA);
    mia.act('closeTask', closeNuts, KAI);
    await settle();
    mia.stop();

    server.failing = null;
    const kai = await openAndStart(server, disk, KAI);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(kai.getSnapshot()).toMatchObject({
      waiting: 0,
      problem: null,
      othersWaiting: [{ name: 'Mia', count: 2 }],
    });
    expect(server.log).toEqual([]);
    kai.act('closeTask', closeOil, KAI);
    await settle();
    expect(server.log.map(({ by, enteredBy }) => [by, enteredBy])).toEqual([[KAI, KAI]]);
    kai.stop();

    const again = await openAndStart(server, disk, MIA);
    await settle();
    expect(again.getSnapshot()).toMatchObject({ waiting: 0, othersWaiting: [] });
    expect(server.log.map(({ by, enteredBy }) => [by, enteredBy])).toEqual([
      [KAI, KAI],
      [MIA, MIA],
      [KAI, MIA],
    ]);
  });

  it('takes the server’s word when someone else signed in unseen, and asks who it is now', async () => {
    const server = new FakeServer();
    const store = await openAndStart(server);
    server.signedIn = KAI;
    store.act('takeTask', takeNuts, MIA);
    await settle();
    expect(server.log).toEqual([]);
    expect(store.getSnapshot()).toMatchObject({
      waiting: 0,
      problem: null,
      othersWaiting: [{ name: 'Mia', count: 1 }],
    });
    server.signedIn = MIA;
    store.retry();
    await settle();
    expect(store.getSnapshot()).toMatchObject({ waiting: 0, othersWaiting: [] });
    expect(server.log).toMatchObject([{ by: MIA, enteredBy: MIA }]);
  });

  it('shows a notice to its author only', async () => {
    const server = new FakeServer();
    const disk = new FakeDisk();
    const mia = await openAndStart(server, disk);
    mia.act('takeTask', takeNuts, KAI);
    mia.act('takeTask', takeNuts, MIA);
    await settle();
    mia.stop();
    expect((await openAndStart(server, disk, KAI)).getSnapshot().notices).toEqual([]);
    expect((await openAndStart(server, disk, MIA)).getSnapshot().notices).toHaveLength(1);
  });
});

describe('WorkStore with a very long queue', () => {
  it('shows it in slices, sends it in batches and asks for the log now and then', async () => {
    const server = new FakeServer();
    const disk = new FakeDisk();
    server.pageSize = 5000;
    const box = new FakeBox(disk);
    const maker = await openAndStart(server, disk);
    maker.stop();
    const stamp = { deviceId: maker.deviceId, deviceTime: 1_000, version: ACTION_VERSION, by: MIA };
    for (let deviceSeq = 1; deviceSeq <= 1500; deviceSeq += 1) {
      const stage = { entryId: CAR, stageId: deviceSeq % 2 ? 'SS1' : 'SS2', driven: true, conditions: {} };
      const action = { kind: 'confirmStage', args: stage, actionId: nextId(), deviceSeq, ...stamp };
      const whose = { owner: MIA, ownerName: 'Mia', eventName: 'Small event' };
      await box.keep({ action, place: 'team.event', words: 'Mia confirmed it', ...whose }, true);
    }
    let pulls = 0;
    const client = server.clientOf(MIA);
    const store = open(server, disk, MIA, noShelf, {
      ...client,
      pull: (since) => {
        pulls += 1;
        return client.pull(since);
      },
    });
    server.failing = 'lost';
    store.start();
    await settle();
    expect(store.getSnapshot().waiting).toBe(1500);
    server.failing = null;
    store.retry();
    await vi.advanceTimersByTimeAsync(10_000);
    expect(store.getSnapshot()).toMatchObject({ waiting: 0, confirmedSeq: 1500, notices: [] });
    expect(server.log.map(({ actionId }) => actionId)).toEqual(
      server.requests.flat().filter((id, at, all) => all.indexOf(id) === at),
    );
    expect(pulls).toBeLessThan(10);
  });
});

describe('WorkStore when someone else touches what is mine', () => {
  it('tells the holder who closed it, once, until it is read, in every tab', async () => {
    const server = new FakeServer();
    const disk = new FakeDisk();
    const mia = await openAndStart(server, disk);
    const otherTab = await openAndStart(server, disk);
    const kai = await openAndStart(server, new FakeDisk(), KAI);
    mia.act('takeTask', takeNuts, MIA);
    await settle();
    kai.act('closeTask', closeNuts, KAI);
    await settle();
    const sentence =
      "Kai closed 'Wheel nuts' at Service A. You had it: leave it now, or look at what was done.";
    for (const tab of [mia, otherTab]) {
      expect(tab.getSnapshot().notices).toMatchObject([{ kind: 'told', sentence, action: null }]);
    }
    expect(kai.getSnapshot().notices).toMatchObject([{ kind: 'kept' }]);
    mia.dismiss(mia.getSnapshot().notices[0]?.id ?? '');
    await settle();
    expect(otherTab.getSnapshot().notices).toEqual([]);
    const again = await openAndStart(server, disk);
    expect(again.getSnapshot().notices).toEqual([]);
  });
});
