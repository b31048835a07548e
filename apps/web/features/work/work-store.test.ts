import { taskIdOf } from '@halfshaft/worklog';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type EventShelf, noShelf } from './event-shelf';
import { FakeServer, FakeShelf, FakeStorage, KAI, MIA, NUTS, nextId, OIL, taskAt } from './fixtures';
import { WorkStore } from './work-store';

const takeNuts = { task: taskAt(NUTS) };
const closeNuts = { task: taskAt(NUTS), findings: [], readings: [] };
const closeOil = { task: taskAt(OIL), findings: [], readings: [] };

function open(
  server: FakeServer,
  storage: FakeStorage = new FakeStorage(),
  me: string = MIA,
  shelf: EventShelf = noShelf,
): WorkStore {
  const around = {
    client: server.clientOf(me),
    openLive: server.openLive,
    storage,
    shelf,
    now: () => Date.now(),
    newId: nextId,
  };
  return new WorkStore(around, 'team.event');
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
    const second = open(server, new FakeStorage(), KAI);
    expect(second.getSnapshot().status).toBe('loading');
    second.start();
    await settle();
    expect(second.getSnapshot()).toMatchObject({ status: 'live', confirmedSeq: 3, waiting: 0 });
    expect(task(second, OIL)).toMatchObject({ state: 'done', doneBy: MIA });
  });

  it('shows an action at once, and confirmed when the server has answered', async () => {
    const server = new FakeServer();
    const store = await openAndStart(server);
    expect(store.act('takeTask', takeNuts, MIA).ok).toBe(true);
    expect(task(store, NUTS)).toMatchObject({ state: 'claimed', holder: MIA });
    expect(store.getSnapshot()).toMatchObject({ waiting: 1, confirmedSeq: 0 });
    expect(store.getSnapshot().entries[0]).toMatchObject({ seq: 1, serverTime: null });
    await settle();
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
    expect(store.getSnapshot().notices).toMatchObject([
      { kind: 'refused', sentence: expect.stringContaining('Kai') },
    ]);
    await settle();
    expect(server.requests.flat()).toHaveLength(1);
  });

  it('shows what others did without being asked', async () => {
    const server = new FakeServer();
    const mia = await openAndStart(server);
    const kai = await openAndStart(server, new FakeStorage(), KAI);
    kai.act('takeTask', takeNuts, KAI);
    await settle();
    expect(task(mia, NUTS)?.holder).toBe(KAI);
  });

  it('gives a task that two take at once to one, and tells the other who has it until it is dismissed', async () => {
    const server = new FakeServer();
    const mia = await openAndStart(server);
    const kai = await openAndStart(server, new FakeStorage(), KAI);
    mia.act('takeTask', takeNuts, MIA);
    kai.act('takeTask', takeNuts, KAI);
    expect(task(kai, NUTS)?.holder).toBe(KAI);
    await settle();
    expect(task(mia, NUTS)?.holder).toBe(MIA);
    expect(task(kai, NUTS)?.holder).toBe(MIA);
    const [notice] = kai.getSnapshot().notices;
    expect(notice?.sentence).toBe('Mia has it already. Ask Mia, or pick another.');
    expect(kai.getSnapshot().waiting).toBe(0);
    kai.dismiss(notice?.action.actionId ?? '');
    expect(kai.getSnapshot().notices).toEqual([]);
  });

  it('tells what stands against a fact that was kept', async () => {
    const server = new FakeServer();
    const mia = await openAndStart(server);
    const kai = await openAndStart(server, new FakeStorage(), KAI);
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
    const kai = await openAndStart(server, new FakeStorage(), KAI);
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
    const storage = new FakeStorage();
    const before = await openAndStart(server, storage);
    server.failing = 'lost';
    before.act('takeTask', takeNuts, MIA);
    await settle();
    before.stop();
    server.failing = null;

    const after = open(server, storage);
    expect(after.getSnapshot().waiting).toBe(1);
    after.start();
    await settle();
    expect(after.getSnapshot()).toMatchObject({ waiting: 0, status: 'live' });
    expect(server.state.tasks.get(taskIdOf(taskAt(NUTS)))?.holder).toBe(MIA);
  });

  it('goes on as the same device, with numbers that were never used', async () => {
    const server = new FakeServer();
    const storage = new FakeStorage();
    const before = await openAndStart(server, storage);
    before.act('takeTask', takeNuts, MIA);
    await settle();
    before.stop();
    const after = await openAndStart(server, storage);
    after.act('closeTask', closeNuts, MIA);
    await settle();
    expect(new Set(server.log.map((entry) => entry.deviceId))).toEqual(new Set([before.deviceId]));
    expect(storage.read('work.device')).toMatchObject({ lastSeq: 2 });
  });

  it('still tells a refusal nobody has dismissed', async () => {
    const server = new FakeServer();
    const storage = new FakeStorage();
    const mia = await openAndStart(server, storage);
    mia.act('takeTask', takeNuts, KAI);
    mia.act('takeTask', takeNuts, MIA);
    await settle();
    mia.stop();
    expect(open(server, storage).getSnapshot().notices).toHaveLength(1);
  });

  it('says so when the browser keeps nothing, and sends all the same', async () => {
    const server = new FakeServer();
    const storage = new FakeStorage();
    storage.refuses = true;
    const store = await openAndStart(server, storage);
    server.failing = 'lost';
    store.act('takeTask', takeNuts, MIA);
    store.act('closeTask', closeNuts, MIA);
    await settle();
    expect(store.getSnapshot()).toMatchObject({ isKept: false, waiting: 2 });
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

  it('lets one unreadable action go with a notice, and sends the others', async () => {
    const server = new FakeServer();
    const client = server.clientOf(MIA);
    const problem = { code: 'badInput' as const, message: 'The time is not right.', fields: [] };
    const push: typeof client.push = async (actions) =>
      actions.some((action) => action.kind === 'closeTask')
        ? { ok: false, lost: false, problem }
        : client.push(actions);
    const around = {
      openLive: server.openLive,
      storage: new FakeStorage(),
      shelf: noShelf,
      now: () => Date.now(),
      newId: nextId,
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
    const storage = new FakeStorage();
    const one = await openAndStart(server, storage);
    const two = await openAndStart(server, storage);
    server.failing = 'lost';
    one.act('takeTask', takeNuts, MIA);
    two.readStorage();
    expect(two.getSnapshot().waiting).toBe(1);
    expect(task(two, NUTS)?.holder).toBe(MIA);
    two.act('closeTask', closeOil, MIA);
    one.readStorage();
    server.failing = null;
    one.retry();
    two.retry();
    await vi.advanceTimersByTimeAsync(60_000);
    one.readStorage();
    two.readStorage();
    for (const tab of [one, two]) expect(tab.getSnapshot()).toMatchObject({ waiting: 0, notices: [] });
    expect(server.log.map((entry) => entry.body.kind)).toEqual(['claimed', 'done']);
    expect(new Set(server.log.map((entry) => entry.deviceId)).size).toBe(1);
  });

  it('opens from what the device kept when the server is not reached, and catches up when it is', async () => {
    const server = new FakeServer();
    const shelf = new FakeShelf();
    const before = await openAndStart(server, new FakeStorage(), MIA, shelf);
    before.act('closeTask', closeOil, MIA);
    await settle();
    before.stop();
    server.failing = 'lost';
    const storage = new FakeStorage();
    const cold = await openAndStart(server, storage, MIA, shelf);
    expect(cold.getSnapshot()).toMatchObject({ status: 'offline', confirmedSeq: 1, waiting: 0 });
    expect(task(cold, OIL)).toMatchObject({ state: 'done', doneBy: MIA });
    expect(cold.act('takeTask', takeNuts, MIA).ok).toBe(true);
    expect(task(cold, NUTS)).toMatchObject({ state: 'claimed', holder: MIA });
    cold.stop();
    server.failing = null;
    const again = await openAndStart(server, storage, MIA, shelf);
    await settle();
    expect(again.getSnapshot()).toMatchObject({ status: 'live', confirmedSeq: 2, waiting: 0 });
  });

  it('lets go of a kept log that the server no longer has', async () => {
    const server = new FakeServer();
    const shelf = new FakeShelf();
    const before = await openAndStart(server, new FakeStorage(), MIA, shelf);
    before.act('closeTask', closeOil, MIA);
    before.act('takeTask', takeNuts, MIA);
    await settle();
    before.stop();
    const restored = new FakeServer();
    const store = await openAndStart(restored, new FakeStorage(), MIA, shelf);
    expect(store.getSnapshot()).toMatchObject({ confirmedSeq: 0 });
    expect(task(store, OIL)).toBeUndefined();
    expect((await shelf.read())?.entries).toEqual([]);
  });
});
