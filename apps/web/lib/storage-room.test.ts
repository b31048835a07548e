import { describe, expect, it } from 'vitest';
import { readRoom } from './storage-room';

function storageOf(more: object): StorageManager {
  return { persisted: async () => true, ...more } as StorageManager;
}

describe('readRoom', () => {
  it('says how much is left and whether that is little', async () => {
    const roomy = storageOf({ estimate: async () => ({ quota: 60_000_000, usage: 1_000_000 }) });
    expect(await readRoom(roomy)).toEqual({ freeBytes: 59_000_000, isLow: false, isPersistent: true });
    const full = storageOf({ estimate: async () => ({ quota: 5, usage: 9 }), persisted: async () => false });
    expect(await readRoom(full)).toEqual({ freeBytes: 0, isLow: true, isPersistent: false });
  });

  it('says nothing where the browser says nothing', async () => {
    const silent = storageOf({ estimate: async () => ({}) });
    const failing = storageOf({ estimate: () => Promise.reject(new Error('Not here.')) });
    expect([await readRoom(undefined), await readRoom(silent), await readRoom(failing)]).toEqual([
      null,
      null,
      null,
    ]);
  });
});
