import { readStored, writeStored } from '@/lib/storage';

/** What outlives the page. `write` says whether it was kept. Tests put their own in. */
export interface KeptStorage {
  read(key: string): unknown;
  write(key: string, value: unknown): boolean;
}

/** All tabs of this browser see the same. */
export const browserStorage: KeptStorage = { read: readStored, write: writeStored };
