import { useEffect, useState } from 'react';

/** With less left than this, a long weekend without coverage may no longer fit. */
const LOW_BYTES = 10_000_000;
const LOOK_EVERY_MILLIS = 60_000;

/** How much the browser still lets this app keep. Null where it does not tell. */
export interface StorageRoom {
  freeBytes: number;
  isLow: boolean;
  /** False: the browser may clear everything by itself when the device runs out of room. */
  isPersistent: boolean;
}

let asked = false;

/** Asks the browser once a page not to clear what is kept. Some ask the person, so only when there is something to keep. */
export function askToPersist(): void {
  if (asked || typeof navigator === 'undefined' || !navigator.storage?.persist) return;
  asked = true;
  void navigator.storage.persist().catch(() => undefined);
}

export async function readRoom(storage: StorageManager | undefined): Promise<StorageRoom | null> {
  try {
    const { quota, usage } = (await storage?.estimate?.()) ?? {};
    if (quota === undefined || usage === undefined) return null;
    const freeBytes = Math.max(0, quota - usage);
    const isPersistent = (await storage?.persisted?.()) ?? false;
    return { freeBytes, isLow: freeBytes < LOW_BYTES, isPersistent };
  } catch {
    return null; // private windows and pages without https are told nothing
  }
}

/** Looked at now and then, and whenever `changed` does. */
export function useStorageRoom(changed: unknown): StorageRoom | null {
  const [room, setRoom] = useState<StorageRoom | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: more is kept when `changed` says so
  useEffect(() => {
    let isGone = false;
    const look = () => {
      void readRoom(navigator.storage).then((found) => isGone || setRoom(found));
    };
    look();
    const timer = setInterval(look, LOOK_EVERY_MILLIS);
    return () => {
      isGone = true;
      clearInterval(timer);
    };
  }, [changed]);
  return room;
}
