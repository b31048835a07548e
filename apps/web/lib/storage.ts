const PREFIX = 'halfshaft.';

/** Null where the browser has no storage or forbids it (private windows, blocked site data, the static build). */
function findStorage(): Storage | null {
  try {
    return typeof window === 'undefined' ? null : window.localStorage;
  } catch {
    return null;
  }
}

/** What was stored under the key, parsed but not checked: the caller decides whether it is still usable. */
export function readStored(key: string): unknown {
  try {
    const text = findStorage()?.getItem(PREFIX + key);
    return text == null ? null : JSON.parse(text);
  } catch {
    return null;
  }
}

/** True when it was stored. False when there is no room or no storage: the screen goes on without. */
export function writeStored(key: string, value: unknown): boolean {
  try {
    const storage = findStorage();
    storage?.setItem(PREFIX + key, JSON.stringify(value));
    return storage !== null;
  } catch {
    return false;
  }
}

export function removeStored(key: string): void {
  try {
    findStorage()?.removeItem(PREFIX + key);
  } catch {
    // Storage that refuses to forget refuses to read as well: nothing is lost.
  }
}

/** Every key that begins so. */
export function listStored(keyStart: string): string[] {
  const storage = findStorage();
  if (storage === null) return [];
  const keys = Array.from({ length: storage.length }, (_, index) => storage.key(index) ?? '');
  return keys.filter((key) => key.startsWith(PREFIX + keyStart)).map((key) => key.slice(PREFIX.length));
}

/** Forgets everything whose key begins so. Used when a person signs out of a shared phone. */
export function removeStoredBelow(keyStart: string): void {
  for (const key of listStored(keyStart)) removeStored(key);
}
