import { useCallback, useSyncExternalStore } from 'react';
import { readStored, removeStored, writeStored } from './storage';

/** `phone` follows the phone's own setting. */
export type ThemeChoice = 'phone' | (typeof PALETTES)[number];
const PALETTES = ['paper', 'graphite', 'sun', 'night'] as const;

/** `public/theme.js` reads the same key before the first paint. */
const KEY = 'theme';
const CHANGED = 'halfshaft-theme';

function readChoice(): ThemeChoice {
  const stored = readStored(KEY);
  return PALETTES.find((palette) => palette === stored) ?? 'phone';
}

function onChange(callback: () => void): () => void {
  window.addEventListener(CHANGED, callback);
  window.addEventListener('storage', callback);
  return () => {
    window.removeEventListener(CHANGED, callback);
    window.removeEventListener('storage', callback);
  };
}

export function useTheme(): { choice: ThemeChoice; choose: (choice: ThemeChoice) => void } {
  const choice = useSyncExternalStore(onChange, readChoice, () => 'phone' as const);
  const choose = useCallback((next: ThemeChoice) => {
    const root = document.documentElement;
    if (next === 'phone') {
      removeStored(KEY);
      delete root.dataset.theme;
    } else {
      writeStored(KEY, next);
      root.dataset.theme = next;
    }
    window.dispatchEvent(new Event(CHANGED));
  }, []);
  return { choice, choose };
}
