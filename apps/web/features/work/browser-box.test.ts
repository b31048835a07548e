import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { KAI, MIA, NUTS, nextId, OIL, replicaOf, taskAt } from './fixtures';
import type { BoxChange, OutboxBox } from './outbox-box';
import type { WaitingAction } from './waiting-action';

const PLACE = '00000000-0000-4000-8000-0000000000f1.00000000-0000-4000-8000-0000000000f2';

/** A browser's small storage, as far as the migration needs it. */
function smallStorage() {
  const texts = new Map<string, string>();
  return {
    get length() {
      return texts.size;
    },
    key: (index: number) => [...texts.keys()][index] ?? null,
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => void texts.set(key, text),
    removeItem: (key: string) => void texts.delete(key),
  };
}

let storage: ReturnType<typeof smallStorage>;

/** As after a reload: nothing is remembered but what was stored. */
async function reload(): Promise<{ box: OutboxBox; heard: BoxChange[] }> {
  vi.resetModules();
  const { browserBox } = await import('./browser-box');
  const heard: BoxChange[] = [];
  const channel = { tell: (change: BoxChange) => void heard.push(change), hear: () => () => undefined };
  return { box: browserBox(channel), heard };
}

/** All that waits at a place, as a tab reads it that knows nothing yet; what it knows is not read again. */
async function contentsOf(box: OutboxBox, place: string) {
  const { ids, fresh: waiting, notices } = await box.read(place, () => false);
  const [first] = ids;
  const rest = await box.read(place, (id) => id === first);
  expect(rest.fresh.length).toBe(waiting.filter(({ action }) => action.actionId !== first).length);
  return { waiting: waiting.sort((one, other) => one.action.deviceSeq - other.action.deviceSeq), notices };
}

function waitingOf(deviceSeq: number, more: Partial<WaitingAction> = {}): WaitingAction {
  const stamp = { deviceId: 'phone', deviceSeq, deviceTime: 1_000, version: 1, by: MIA };
  const action = { kind: 'takeTask', args: { task: taskAt(NUTS) }, actionId: nextId(), ...stamp };
  const whose = { owner: MIA, ownerName: 'Mia' };
  return { action, place: PLACE, eventName: 'Small event', ...whose, words: 'Mia took it', ...more };
}

beforeEach(() => {
  vi.resetModules();
  storage = smallStorage();
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.stubGlobal('window', { localStorage: storage });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

// Each test loads the modules anew, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 30_000 });

describe('browserBox', () => {
  it('is the same device after a reload, and holds what was kept in the order of the device', async () => {
    const { box, heard } = await reload();
    const { deviceId } = await box.device();
    const first = await box.keep(waitingOf(1), false);
    await box.keep(waitingOf(2, { owner: KAI }), false);
    expect(heard[0]).toEqual({ place: PLACE, added: first });
    const again = (await reload()).box;
    expect(await again.device()).toEqual({ deviceId, lastSeq: 2 });
    const { waiting } = await contentsOf(again, PLACE);
    expect(waiting.map(({ action, owner }) => [action.deviceSeq, owner])).toEqual([
      [1, MIA],
      [2, KAI],
    ]);
    expect((await contentsOf(again, 'another')).waiting).toEqual([]);
  });

  it('gives each of many actions that come at once a number of its own', async () => {
    const { box } = await reload();
    await box.device();
    const kept = await Promise.all(Array.from({ length: 20 }, () => box.keep(waitingOf(1), false)));
    expect(kept.map(({ action }) => action.deviceSeq)).toEqual(Array.from({ length: 20 }, (_, at) => at + 1));
  });

  it('keeps an action that may have been sent under the number it had', async () => {
    const { box } = await reload();
    for (const seq of [1, 2, 3]) await box.keep(waitingOf(seq), false);
    expect((await box.keep(waitingOf(2), true)).action.deviceSeq).toBe(2);
    expect((await box.device()).lastSeq).toBe(3);
  });

  it('lets go of an action and takes in what is to be said of it, both or neither', async () => {
    const { box } = await reload();
    const { action } = await box.keep(waitingOf(1), false);
    const notice = {
      id: action.actionId,
      place: PLACE,
      owner: MIA,
      kind: 'refused',
      sentence: 'No.',
      action,
    } as const;
    // A notice that cannot be stored: a function is no data.
    const broken = { ...notice, sentence: (() => 'No.') as unknown as string };
    await expect(box.settle(PLACE, { ids: [action.actionId], notices: [broken] })).rejects.toThrow();
    expect((await contentsOf(box, PLACE)).waiting).toHaveLength(1);
    await box.settle(PLACE, { ids: [action.actionId], notices: [notice] });
    expect(await contentsOf(box, PLACE)).toEqual({ waiting: [], notices: [notice] });
    await box.dismiss(PLACE, notice.id);
    expect((await box.readAll()).notices).toEqual([]);
  });

  it('tells each person once of an entry, also after it was read', async () => {
    const { box } = await reload();
    const told = (seq: number, owner: string) => ({
      seq,
      notice: {
        id: `${owner} ${seq}`,
        place: PLACE,
        owner,
        kind: 'told',
        sentence: 'So.',
        action: null,
      } as const,
    });
    await box.tell(PLACE, MIA, 5, [told(4, MIA)]);
    await box.dismiss(PLACE, `${MIA} 4`);
    await box.tell(PLACE, MIA, 5, [told(4, MIA)]);
    await box.tell(PLACE, KAI, 5, [told(4, KAI)]);
    await box.tell(PLACE, MIA, 7, [told(4, MIA), told(6, MIA)]);
    expect((await contentsOf(box, PLACE)).notices.map(({ id }) => id).sort()).toEqual(
      [`${MIA} 6`, `${KAI} 4`].sort(),
    );
  });

  it('passes over what a hand put into the storage, and sends the rest', async () => {
    const { box } = await reload();
    await box.keep(waitingOf(1), false);
    const { openPhoneDatabase } = await import('@/lib/phone-database');
    await (await openPhoneDatabase())?.put('outbox', { place: PLACE, action: 7 } as never, 'x');
    expect((await contentsOf(box, PLACE)).waiting).toHaveLength(1);
  });

  it('reads hundreds whole, and nothing of another place among them', async () => {
    const { box } = await reload();
    await Promise.all(
      Array.from({ length: 600 }, (_, at) =>
        box.keep(waitingOf(at + 1, at % 3 === 0 ? { place: 'another' } : {}), true),
      ),
    );
    const { waiting } = await contentsOf(box, PLACE);
    expect(waiting.map(({ action }) => action.deviceSeq)).toEqual(
      Array.from({ length: 600 }, (_, at) => at + 1).filter((seq) => (seq - 1) % 3 !== 0),
    );
  });

  it('throws everything away only when asked to', async () => {
    const { box, heard } = await reload();
    const { action } = await box.keep(waitingOf(1), false);
    const { wipeCopies } = await import('@/lib/phone-database');
    await wipeCopies();
    expect((await box.readAll()).waiting).toHaveLength(1);
    await box.clear();
    expect((await box.readAll()).waiting).toEqual([]);
    expect(heard.at(-1)).toMatchObject({ place: PLACE, settled: [action.actionId] });
  });
});

describe('what the app before this one left', () => {
  const oldAction = (cardId: string, deviceSeq: number) =>
    waitingOf(deviceSeq, {}).action && {
      ...waitingOf(deviceSeq).action,
      args: { task: taskAt(cardId) },
    };
  const put = (key: string, value: unknown) =>
    storage.setItem(`halfshaft.work.${key}`, JSON.stringify(value));
  const left = () => JSON.parse(storage.getItem(`halfshaft.work.${PLACE}.outbox`) ?? 'null') as unknown;

  it('is brought over once, with its device, its numbers and its notices', async () => {
    const [first, second, refused] = [oldAction(NUTS, 3), oldAction(OIL, 4), oldAction(NUTS, 2)];
    put('device', { deviceId: 'old phone', lastSeq: 4 });
    put(`${PLACE}.outbox`, { actions: [first, second], answered: [] });
    put(`${PLACE}.notices`, [{ action: refused, kind: 'refused', sentence: 'Kai has it.' }]);
    const { openPhoneDatabase } = await import('@/lib/phone-database');
    const kept = { version: 1, receivedAt: 1, replica: replicaOf(KAI) };
    await (await openPhoneDatabase())?.put('replicas', kept, PLACE);

    const { box } = await reload();
    expect(await box.device()).toEqual({ deviceId: 'old phone', lastSeq: 4 });
    const { waiting, notices } = await contentsOf(box, PLACE);
    expect(waiting.map(({ action }) => action)).toEqual([first, second]);
    // Kai was signed in, whoever did it.
    expect(waiting[0]).toMatchObject({ owner: KAI, ownerName: 'Kai', eventName: 'Small event' });
    expect(notices).toMatchObject([{ id: refused.actionId, owner: KAI, sentence: 'Kai has it.' }]);
    // A tab of the app before reads that it has nothing more to send.
    expect(left()).toEqual({ actions: [], answered: [first.actionId, second.actionId] });
    expect((await reload()).box).toBeDefined();
    expect((await contentsOf((await reload()).box, PLACE)).waiting).toHaveLength(2);
  });

  it('stays where it is until the database has it', async () => {
    const action = oldAction(NUTS, 1);
    put(`${PLACE}.outbox`, { actions: [action], answered: [] });
    const { openPhoneDatabase } = await import('@/lib/phone-database');
    (await openPhoneDatabase())?.close();
    const { box } = await reload();
    const { openPhoneDatabase: open } = await import('@/lib/phone-database');
    const database = await open();
    if (database)
      vi.spyOn(database, 'transaction').mockImplementationOnce(() => {
        throw new DOMException('No room.', 'QuotaExceededError');
      });
    await expect(box.device()).rejects.toThrow('No room.');
    expect(left()).toMatchObject({ actions: [{ actionId: action.actionId }] });
    await box.device();
    expect((await contentsOf(box, PLACE)).waiting).toMatchObject([{ owner: MIA }]);
  });

  it('is brought over again when a tab of the app before adds something', async () => {
    const { box } = await reload();
    await box.device();
    put(`${PLACE}.outbox`, { actions: [oldAction(NUTS, 1)], answered: [] });
    await box.device();
    expect((await contentsOf(box, PLACE)).waiting).toHaveLength(1);
  });
});
