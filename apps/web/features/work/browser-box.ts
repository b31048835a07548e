import type { ActionId, PersonId } from '@halfshaft/worklog';
import { later } from '@/lib/later';
import { openPhoneDatabase, type PhoneDatabase, storeTogether } from '@/lib/phone-database';
import { listStored } from '@/lib/storage';
import { askToPersist } from '@/lib/storage-room';
import { type TabChannel, tabChannel } from '@/lib/tab-channel';
import { newId } from './new-id';
import type { BoxChange, BoxContents, BoxNews, KnownDevice, OutboxBox } from './outbox-box';
import { isWaiting } from './read-kept';
import type { Place, WaitingAction, WorkNotice } from './waiting-action';

export const DEVICE_MARK = 'device';

const CHUNK = 250;

/** Written to the disk before the promise resolves, not only handed to the system: a flat battery must not undo a tap. */
const DURABLE = { durability: 'strict' } as const;

const OLD_OUTBOX = later(() => import('./move-old-outbox'));

/** The box in the browser's own database. */
export function browserBox(channel: TabChannel<BoxChange> = tabChannel('outbox')): OutboxBox {
  return {
    async device() {
      const database = await openOrThrow();
      // Most phones have nothing of an app before this one.
      if (listStored('work.').length > 0) await (await OLD_OUTBOX.fetch()).moveOldOutbox(database);
      return findDevice(database);
    },
    read: async (place, isKnown) => readPlace(await openOrThrow(), place, isKnown),
    readAll: async () => readAll(await openOrThrow()),
    async keep(waiting, fixed) {
      const kept = await keepOne(await openOrThrow(), waiting, fixed);
      channel.tell({ place: kept.place, added: kept });
      askToPersist();
      return kept;
    },
    async settle(place, { ids, notices }) {
      const change = (await openOrThrow()).transaction(['outbox', 'notices'], 'readwrite', DURABLE);
      await storeTogether(change, [
        ...ids.map((id) => () => change.objectStore('outbox').delete(id)),
        ...notices.map((notice) => () => change.objectStore('notices').put(notice, notice.id)),
      ]);
      channel.tell({ place, settled: ids, noticed: notices.length > 0 });
    },
    async tell(place, owner, seq, notices) {
      const change = (await openOrThrow()).transaction(['notices', 'marks'], 'readwrite', DURABLE);
      const marks = change.objectStore('marks');
      const key = toldMark(place, owner);
      const before = await marks.get(key);
      const told = typeof before === 'number' ? before : 0;
      const fresh = notices.filter((each) => each.seq > told);
      await storeTogether(change, [
        ...fresh.map(
          ({ notice }) =>
            () =>
              change.objectStore('notices').put(notice, notice.id),
        ),
        ...(seq > told ? [() => marks.put(seq, key)] : []),
      ]);
      if (fresh.length > 0) channel.tell({ place, noticed: true });
    },
    async dismiss(place, noticeId) {
      await (await openOrThrow()).delete('notices', noticeId);
      channel.tell({ place, noticed: true });
    },
    async clear() {
      const database = await openOrThrow();
      const { waiting, notices } = await readAll(database);
      const change = database.transaction(['outbox', 'notices'], 'readwrite', DURABLE);
      await storeTogether(change, [
        () => change.objectStore('outbox').clear(),
        () => change.objectStore('notices').clear(),
      ]);
      for (const place of new Set([...waiting, ...notices].map((each) => each.place))) {
        const settled = waiting.filter((each) => each.place === place).map(({ action }) => action.actionId);
        channel.tell({ place, settled, noticed: true });
      }
    },
    hear: (listener) => channel.hear(listener),
  };
}

async function openOrThrow(): Promise<PhoneDatabase> {
  const database = await openPhoneDatabase();
  if (!database) throw new Error('The browser keeps no database.');
  return database;
}

async function findDevice(database: PhoneDatabase): Promise<KnownDevice> {
  const change = database.transaction('marks', 'readwrite', DURABLE);
  const known = (await change.store.get(DEVICE_MARK)) as KnownDevice | undefined;
  const device = known ?? { deviceId: newId(), lastSeq: 0 };
  if (!known) await change.store.put(device, DEVICE_MARK);
  await change.done;
  return device;
}

async function keepOne(
  database: PhoneDatabase,
  waiting: WaitingAction,
  fixed: boolean,
): Promise<WaitingAction> {
  const change = database.transaction(['outbox', 'marks'], 'readwrite', DURABLE);
  const marks = change.objectStore('marks');
  const device = (await marks.get(DEVICE_MARK)) as KnownDevice | undefined;
  const { action } = waiting;
  const lastSeq = device?.lastSeq ?? 0;
  const deviceSeq = fixed ? action.deviceSeq : Math.max(action.deviceSeq, lastSeq + 1);
  const kept = { ...waiting, action: { ...action, deviceSeq } };
  const counted = { deviceId: device?.deviceId ?? action.deviceId, lastSeq: Math.max(lastSeq, deviceSeq) };
  await storeTogether(change, [
    () => change.objectStore('outbox').put(kept, action.actionId),
    () => marks.put(counted, DEVICE_MARK),
  ]);
  return kept;
}

/** In chunks, so that reading thousands leaves room for thumbs in between. */
async function readPlace(
  database: PhoneDatabase,
  place: Place,
  isKnown: (id: ActionId) => boolean,
): Promise<BoxNews> {
  const look = database.transaction(['outbox', 'notices']);
  const outbox = look.objectStore('outbox');
  const notices = (await look.objectStore('notices').index('byPlace').getAll(place)) as WorkNotice[];
  const ids = await outbox.index('byPlace').getAllKeys(place);
  const unknown = ids.filter((id) => !isKnown(id));
  const fresh: unknown[] = [];
  for (let from = 0; from < unknown.length; from += CHUNK) {
    const chunk = unknown.slice(from, from + CHUNK);
    const first = chunk[0] ?? '';
    // The ids come in the order of the store, so one range holds the chunk, with few others in between.
    fresh.push(...(await outbox.getAll(IDBKeyRange.bound(first, chunk.at(-1) ?? first))));
  }
  const isFresh = (each: WaitingAction) => each.place === place && !isKnown(each.action.actionId);
  return { ids, fresh: fresh.filter(isWaiting).filter(isFresh), notices };
}

async function readAll(database: PhoneDatabase): Promise<BoxContents> {
  const look = database.transaction(['outbox', 'notices']);
  const [waiting, notices] = await Promise.all([
    look.objectStore('outbox').getAll(),
    look.objectStore('notices').getAll(),
  ]);
  return { waiting: waiting.filter(isWaiting), notices: notices as WorkNotice[] };
}

function toldMark(place: Place, owner: PersonId): string {
  return `told.${place}.${owner}`;
}
