import type { Place } from './waiting-action';

/** What the one who has the turn may ask. */
export interface Turn {
  /** False when the turn was lost, by sleeping longer than a turn lasts. To be asked before each request. */
  holds(): Promise<boolean>;
}

/**
 * Of several tabs one sends, so that actions arrive once and in the order of the device. Runs the work when it is this
 * tab's turn; gives up waiting when `signal` is aborted, without having run it.
 */
export type TakeTurn = (
  place: Place,
  work: (turn: Turn) => Promise<void>,
  signal: AbortSignal,
) => Promise<void>;

const ALWAYS: Turn = { holds: async () => true };

/** A lock of the browser ends with its tab, however that ends. */
export function turnByLock(locks: LockManager): TakeTurn {
  return async (place, work, signal) => {
    try {
      await locks.request(`halfshaft.send.${place}`, { signal }, () => work(ALWAYS));
    } catch (error) {
      if (!signal.aborted) throw error;
    }
  };
}
