import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, expect, it, vi } from 'vitest';

const photoOf = (photoId: string, place: string, ownerName: string) => ({
  ...{ photoId, place, owner: ownerName, ownerName, takenAt: 1 },
  ...{ file: new Uint8Array([7, 8, 9]), refused: null },
});

/** As after a reload: nothing is remembered but what was stored. */
async function reload() {
  vi.resetModules();
  const { browserPhotos } = await import('./browser-photos');
  return browserPhotos();
}

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

it('keeps pictures by event over a reload, knows whose they are, and lets go of each', async () => {
  const box = await reload();
  await box.keep(photoOf('a', 'team.one', 'Mia'));
  await box.keep(photoOf('b', 'team.one', 'Kai'));
  await box.keep(photoOf('c', 'team.two', 'Mia'));
  const again = await reload();
  const heard = vi.fn();
  again.hear(heard);
  expect((await again.read('team.one')).map(({ photoId }) => photoId).sort()).toEqual(['a', 'b']);
  expect([...((await again.read('team.two'))[0]?.file ?? [])]).toEqual([7, 8, 9]);
  expect(await again.listOwners()).toEqual([
    { place: 'team.one', ownerName: 'Kai' },
    { place: 'team.one', ownerName: 'Mia' },
    { place: 'team.two', ownerName: 'Mia' },
  ]);
  await again.drop({ photoId: 'a', place: 'team.one' });
  expect(await again.read('team.one')).toHaveLength(1);
  await again.clear();
  expect(await again.listOwners()).toEqual([]);
  expect(heard).toHaveBeenCalledTimes(2);
});

it('finds what waits to be sent still there in a database from before there were photos', async () => {
  const before = await openDB('halfshaft', 2, {
    upgrade(database) {
      for (const store of ['replicas', 'entries', 'answers', 'marks']) database.createObjectStore(store);
      for (const store of ['outbox', 'notices'])
        database.createObjectStore(store).createIndex('byPlace', 'place');
    },
  });
  await before.put('outbox', { place: 'team.one' }, 'action');
  before.close();
  const box = await reload();
  await box.keep(photoOf('a', 'team.one', 'Mia'));
  const { openPhoneDatabase } = await import('@/lib/phone-database');
  expect(await (await openPhoneDatabase())?.getAllKeys('outbox')).toEqual(['action']);
  expect(await box.read('team.one')).toHaveLength(1);
});
