import type { EventReplica } from '@halfshaft/contract';
import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { sessionEpoch, subscribeSession } from '@/lib/session-change';
import type { PhotoQueue } from '../photos/photo-queue';
import { findPhotos, findStore, holdStore } from './hold-store';
import { NOTHING_YET, type WorkSnapshot } from './work-snapshot';
import type { WorkStore } from './work-store';

export interface EventWork extends WorkSnapshot {
  act: WorkStore['act'];
  dismiss: WorkStore['dismiss'];
  retry: WorkStore['retry'];
  /** The pictures on this phone; `usePhotos` tells of their changes. */
  photos: PhotoQueue;
  /** This browser as the log knows it. */
  deviceId: string;
}

/** The same once the event is here. */
export type OpenedWork = EventWork & { replica: EventReplica };

/**
 * The work of a team at an event: what is confirmed with own unanswered actions on top, kept up to date while the
 * screen is open.
 *
 * @example
 * const { replica, state, act } = useEventWork(teamId, eventId);
 * act('takeTask', { task }, me);
 */
export function useEventWork(teamId: string, eventId: string): EventWork {
  const epoch = useSyncExternalStore(subscribeSession, sessionEpoch, () => 0);
  const store = findStore(teamId, eventId);
  const photos = findPhotos(teamId, eventId);
  const snapshot = useSyncExternalStore(store.subscribe, store.getSnapshot, () => NOTHING_YET);
  // biome-ignore lint/correctness/useExhaustiveDependencies: with another person signed in, the store is another one
  useEffect(() => holdStore(teamId, eventId), [teamId, eventId, epoch]);
  return useMemo(
    () => ({
      ...snapshot,
      act: store.act,
      dismiss: store.dismiss,
      retry: store.retry,
      photos,
      deviceId: store.deviceId,
    }),
    [snapshot, store, photos],
  );
}
