import { useSyncExternalStore } from 'react';

function onChange(callback: () => void): () => void {
  window.addEventListener('hashchange', callback);
  return () => window.removeEventListener('hashchange', callback);
}

/** What stands after the # of the address; null in the static page, which does not know it. */
export function useHash(): string | null {
  return useSyncExternalStore(
    onChange,
    () => window.location.hash.slice(1),
    () => null,
  );
}
