import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, expect, it, vi } from 'vitest';

/** As after a reload: nothing is remembered but what was stored. */
async function reload() {
  vi.resetModules();
  return import('./draft-photo-box');
}

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

it('keeps the pictures of each draft over a reload, until it is done or its person signs out', async () => {
  const before = await reload();
  await before.keepDraftPhotos('snag.a', [new Uint8Array([1]), new Uint8Array([2, 3])]);
  await before.keepDraftPhotos('snag.b', [new Uint8Array([4])]);
  const after = await reload();
  expect(await after.readDraftPhotos('snag.a')).toEqual([new Uint8Array([1]), new Uint8Array([2, 3])]);
  await after.keepDraftPhotos('snag.a', []);
  expect(await after.readDraftPhotos('snag.a')).toEqual([]);
  expect(await after.readDraftPhotos('snag.b')).toHaveLength(1);
  await after.forgetDraftPhotos();
  expect(await after.readDraftPhotos('snag.b')).toEqual([]);
});
