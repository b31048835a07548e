import { subscribeSession } from '@/lib/session-change';
import { browserPhotos } from '../photos/browser-photos';
import { PhotoQueue } from '../photos/photo-queue';
import { sendPicture } from '../photos/send-picture';
import { standingOf } from '../photos/standing-of';
import { browserBox } from './browser-box';
import { browserShelf } from './browser-shelf';
import { turnByLease } from './lease';
import { openLiveOf } from './live-source';
import { newId } from './new-id';
import { type TakeTurn, turnByLock } from './take-turn';
import { placeOf } from './waiting-action';
import { hearEventChange, workClientOf } from './work-client';
import { WorkStore } from './work-store';

interface Held {
  store: WorkStore;
  photos: PhotoQueue;
  users: number;
  /** Null until it runs. */
  forgetBrowser: (() => void) | null;
}

/** One store an event, shared by all screens of this page, so that going from one to the next fetches nothing anew. */
const held = new Map<string, Held>();
let isFollowingSession = false;

/** Long enough for the next screen to take it over. */
const LINGER_MILLIS = 30_000;

export const deviceBox = browserBox();
export const devicePhotos = browserPhotos();

export function findStore(teamId: string, eventId: string): WorkStore {
  return holdOf(teamId, eventId).store;
}

/** The pictures of the event that are on this phone. */
export function findPhotos(teamId: string, eventId: string): PhotoQueue {
  return holdOf(teamId, eventId).photos;
}

/** Starts the store for one more screen; the returned function lets go of it. */
export function holdStore(teamId: string, eventId: string): () => void {
  followSession();
  const hold = holdOf(teamId, eventId);
  hold.users += 1;
  if (!hold.forgetBrowser) {
    hold.store.start();
    hold.photos.start();
    hold.forgetBrowser = followBrowser(hold, teamId, eventId);
  } else if (hold.store.getSnapshot().problem) {
    hold.store.retry();
    hold.photos.resume();
  }
  return () => {
    setTimeout(() => letGo(placeOf(teamId, eventId), hold), LINGER_MILLIS);
  };
}

function holdOf(teamId: string, eventId: string): Held {
  const place = placeOf(teamId, eventId);
  const known = held.get(place);
  if (known) return known;
  const around = {
    client: workClientOf(teamId, eventId),
    openLive: openLiveOf(teamId, eventId),
    box: deviceBox,
    takeTurn: browserTurn(),
    shelf: browserShelf(place),
    now: () => Date.now(),
    newId: () => newId(),
    later: (run: () => void) => void setTimeout(run, 0),
  };
  const store = new WorkStore(around, place);
  const photos = new PhotoQueue({
    box: devicePhotos,
    place,
    send: (photoId, file) => sendPicture(teamId, photoId, file),
    standingOf: (photo) => standingOf(store.getSnapshot(), photo),
  });
  const fresh: Held = { store, photos, users: 0, forgetBrowser: null };
  held.set(place, fresh);
  return fresh;
}

/** Locks are given to pages over https only. */
function browserTurn(): TakeTurn {
  const locks = typeof navigator === 'undefined' ? undefined : navigator.locks;
  return locks ? turnByLock(locks) : turnByLease(newId(), () => Date.now());
}

function letGo(name: string, hold: Held): void {
  hold.users -= 1;
  stopUnused(name, hold);
}

/** What waits is still sent while another page is read; a closed tab leaves it to the next one that opens. */
function stopUnused(name: string, hold: Held): void {
  if (hold.users > 0 || held.get(name) !== hold) return;
  if (hold.store.getSnapshot().waiting > 0) {
    setTimeout(() => stopUnused(name, hold), LINGER_MILLIS);
    return;
  }
  drop(name, hold);
}

function drop(name: string, hold: Held): void {
  hold.store.stop();
  hold.photos.stop();
  hold.forgetBrowser?.();
  held.delete(name);
}

/** With another person behind the session, all that was known for the one before is dropped; screens ask anew. */
function followSession(): void {
  if (isFollowingSession) return;
  isFollowingSession = true;
  subscribeSession(() => {
    for (const [name, hold] of [...held]) drop(name, hold);
  });
}

/** What the page and the browser tell: a form that changed the event, a network, another tab's writing, a screen looked at again. */
function followBrowser({ store, photos }: Held, teamId: string, eventId: string): () => void {
  const forgetChanges = hearEventChange(teamId, eventId, () => store.eventChanged());
  const forgetLog = store.subscribe(() => photos.kick());
  const onOnline = () => {
    store.retry();
    photos.resume();
  };
  // Only an app before this one still writes there; what it leaves is brought over.
  const onStorage = (event: StorageEvent) => {
    if (event.key?.includes('.work.')) store.readStorage();
  };
  const onVisible = () => {
    if (document.visibilityState === 'visible') store.lookedAt();
  };
  window.addEventListener('online', onOnline);
  window.addEventListener('storage', onStorage);
  document.addEventListener('visibilitychange', onVisible);
  return () => {
    forgetChanges();
    forgetLog();
    window.removeEventListener('online', onOnline);
    window.removeEventListener('storage', onStorage);
    document.removeEventListener('visibilitychange', onVisible);
  };
}
