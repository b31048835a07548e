import { useSyncExternalStore } from 'react';

function onChange(callback: () => void): () => void {
  window.addEventListener('online', callback);
  window.addEventListener('offline', callback);
  return () => {
    window.removeEventListener('online', callback);
    window.removeEventListener('offline', callback);
  };
}

/** Whether the device believes it has a network. It may be wrong: a joined Wi-Fi is not yet a server that answers. */
export function useOnline(): boolean {
  return useSyncExternalStore(
    onChange,
    () => navigator.onLine,
    () => true,
  );
}
