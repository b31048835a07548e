import type { ActionId, DeviceId, PersonId } from '@halfshaft/worklog';
import type { Place, Settled, WaitingAction, WorkNotice } from './waiting-action';

/** What the box holds, of every person who uses this device. */
export interface BoxContents {
  waiting: WaitingAction[];
  notices: WorkNotice[];
}

/** What of one place a tab does not know yet. */
export interface BoxNews {
  /** Of all that waits. */
  ids: ActionId[];
  /** Those of them that were not known. */
  fresh: WaitingAction[];
  notices: WorkNotice[];
}

/** This browser as the log knows it: an id made once, and the number of its last action. */
export interface KnownDevice {
  deviceId: DeviceId;
  lastSeq: number;
}

/** What changed in the box. */
export interface BoxChange {
  place: Place;
  added?: WaitingAction;
  settled?: readonly ActionId[];
  /** Notices came or went. */
  noticed?: boolean;
}

/**
 * Keeps actions and notices beyond the page, for all tabs of this device. Each call is one transaction: it has happened
 * as a whole when the promise resolves, and not at all when it rejects.
 */
export interface OutboxBox {
  /** Makes the device's id at the first call ever. */
  device(): Promise<KnownDevice>;
  /** `isKnown`: what the tab has read already need not be read again, which counts when thousands wait. */
  read(place: Place, isKnown: (id: ActionId) => boolean): Promise<BoxNews>;
  readAll(): Promise<BoxContents>;
  /**
   * Keeps an action and counts the device's number on. Where another tab has used the number meanwhile it gets the next
   * one, unless it is `fixed` since it may have been sent already. Returns it as it was kept.
   */
  keep(waiting: WaitingAction, fixed: boolean): Promise<WaitingAction>;
  /** Answered actions go and what is to be said of them comes, together. */
  settle(place: Place, settled: Settled): Promise<void>;
  /** Notices about entries up to `seq`, once for each person: what was told before is passed over. */
  tell(place: Place, owner: PersonId, seq: number, notices: readonly ToldNotice[]): Promise<void>;
  dismiss(place: Place, noticeId: string): Promise<void>;
  /** Throws away all that waits and all notices. */
  clear(): Promise<void>;
  /** What other tabs change. The returned function stops hearing. */
  hear(listener: (change: BoxChange) => void): () => void;
}

/** A notice about an entry of the log. */
export interface ToldNotice {
  seq: number;
  notice: WorkNotice;
}
