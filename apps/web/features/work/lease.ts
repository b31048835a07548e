import { openPhoneDatabase } from '@/lib/phone-database';
import type { TakeTurn } from './take-turn';
import type { Place } from './waiting-action';

/** Longer than a request may take, so that a tab that is sending is not overtaken. */
export const LEASE_MILLIS = 25_000;
/** While another tab has the turn, how soon to look again. */
const LOOK_AGAIN_MILLIS = 2000;

interface Lease {
  tab: string;
  until: number;
}

/**
 * A turn by a row in the database, for pages without https, where browsers give no locks. It is taken and renewed in one
 * transaction, and runs out by itself, since a closed tab says no farewell.
 */
export function turnByLease(tab: string, now: () => number): TakeTurn {
  return async (place, work, signal) => {
    while (!(await takeLease(place, tab, now()))) {
      await pause(LOOK_AGAIN_MILLIS, signal);
      if (signal.aborted) return;
    }
    try {
      if (!signal.aborted) await work({ holds: () => takeLease(place, tab, now()) });
    } finally {
      await giveLease(place, tab);
    }
  };
}

/** True when this tab may send. Where there is no database, each tab is alone with what it holds. */
async function takeLease(place: Place, tab: string, now: number): Promise<boolean> {
  const database = await openPhoneDatabase();
  if (!database) return true;
  const change = database.transaction('marks', 'readwrite');
  const lease = await change.store.get(keyOf(place));
  const isTaken = isLease(lease) && lease.tab !== tab && isRunning(lease, now);
  if (!isTaken) await change.store.put({ tab, until: now + LEASE_MILLIS } satisfies Lease, keyOf(place));
  await change.done;
  return !isTaken;
}

async function giveLease(place: Place, tab: string): Promise<void> {
  const database = await openPhoneDatabase();
  if (!database) return;
  const change = database.transaction('marks', 'readwrite');
  const lease = await change.store.get(keyOf(place));
  if (isLease(lease) && lease.tab === tab) await change.store.delete(keyOf(place));
  await change.done;
}

/** A turn that would end later than any turn can was written before the device's clock was set back. */
function isRunning({ until }: Lease, now: number): boolean {
  return until > now && until <= now + LEASE_MILLIS;
}

function isLease(stored: unknown): stored is Lease {
  return typeof stored === 'object' && stored !== null && 'tab' in stored && 'until' in stored;
}

function keyOf(place: Place): string {
  return `turn.${place}`;
}

function pause(millis: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const end = () => {
      clearTimeout(timer);
      signal.removeEventListener('abort', end);
      resolve();
    };
    const timer = setTimeout(end, millis);
    signal.addEventListener('abort', end);
  });
}
