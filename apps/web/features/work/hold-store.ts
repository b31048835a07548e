import { browserShelf } from './browser-shelf';
import { browserStorage } from './kept-storage';
import { openLiveOf } from './live-source';
import { newId } from './new-id';
import { workClientOf } from './work-client';
import { WorkStore } from './work-store';

interface Held {
  store: WorkStore;
  users: number;
  /** Null until it runs. */
  forgetBrowser: (() => void) | null;
}

/** One store an event, shared by all screens of this page, so that going from one to the next fetches nothing anew. */
const held = new Map<string, Held>();

/** Long enough for the next screen to take it over. */
const LINGER_MILLIS = 30_000;

export function findStore(teamId: string, eventId: string): WorkStore {
  return holdOf(teamId, eventId).store;
}

/** Starts the store for one more screen; the returned function lets go of it. */
export function holdStore(teamId: string, eventId: string): () => void {
  const hold = holdOf(teamId, eventId);
  hold.users += 1;
  if (!hold.forgetBrowser) {
    hold.store.start();
    hold.forgetBrowser = followBrowser(hold.store);
  } else if (hold.store.getSnapshot().problem) {
    hold.store.retry();
  }
  return () => {
    setTimeout(() => letGo(`${teamId}.${eventId}`, hold), LINGER_MILLIS);
  };
}

function holdOf(teamId: string, eventId: string): Held {
  const name = `${teamId}.${eventId}`;
  const known = held.get(name);
  if (known) return known;
  const around = {
    client: workClientOf(teamId, eventId),
    openLive: openLiveOf(teamId, eventId),
    storage: browserStorage,
    shelf: browserShelf(name),
    now: () => Date.now(),
    newId: () => newId(),
  };
  const fresh: Held = { store: new WorkStore(around, name), users: 0, forgetBrowser: null };
  held.set(name, fresh);
  return fresh;
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
  hold.store.stop();
  hold.forgetBrowser?.();
  held.delete(name);
}

/** What the browser tells: a network, another tab's writing, a screen that is looked at again. */
function followBrowser(store: WorkStore): () => void {
  const onOnline = () => store.retry();
  const onStorage = () => store.readStorage();
  const onVisible = () => {
    if (document.visibilityState === 'visible') store.lookedAt();
  };
  window.addEventListener('online', onOnline);
  window.addEventListener('storage', onStorage);
  document.addEventListener('visibilitychange', onVisible);
  return () => {
    window.removeEventListener('online', onOnline);
    window.removeEventListener('storage', onStorage);
    document.removeEventListener('visibilitychange', onVisible);
  };
}
