import { useCallback, useEffect, useRef, useState } from 'react';
import type { FieldValues, UseFormReturn } from 'react-hook-form';
import { pickKept } from './pick-kept';
import { readStored, removeStored, writeStored } from './storage';

/** Every kept form's key begins so: `removeStoredBelow(KEPT_FORMS)` forgets them all on sign-out. */
export const KEPT_FORMS = 'form.';
const QUIET_MILLIS = 400;

export interface KeptForm {
  /** True when something typed earlier was put back: tell the person, and offer to start afresh. */
  restored: boolean;
  /** Call after the server has taken the form. */
  clear: () => void;
}

/**
 * Keeps what is typed into a form on this device, so that a reload, a flat battery or an expired session loses
 * nothing. The key names the form and what it is about (`snag.<entry>`). Fields in `leaveOut` (passwords) are never
 * stored.
 */
export function useKeptForm<Values extends FieldValues>(
  key: string,
  form: UseFormReturn<Values>,
  leaveOut: readonly string[] = [],
): KeptForm {
  const [restored, setRestored] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const storageKey = KEPT_FORMS + key;
  // As text, so that a list written in place does not restart the effects at each render.
  const leftOut = leaveOut.join(' ');
  const { getValues, reset, subscribe } = form;

  useEffect(() => {
    const current = getValues();
    const kept = pickKept(readStored(storageKey), current, leftOut.split(' '));
    if (kept !== null) reset({ ...current, ...kept }, { keepDefaultValues: true });
    if (kept !== null) setRestored(true);
  }, [storageKey, leftOut, getValues, reset]);

  useEffect(() => {
    function store() {
      timer.current = undefined;
      const entries = Object.entries(getValues()).filter(([name]) => !leftOut.split(' ').includes(name));
      writeStored(storageKey, Object.fromEntries(entries));
    }
    // A phone put into a pocket may never run the timer, so leaving the page stores at once.
    function storeIfWaiting() {
      if (timer.current === undefined) return;
      clearTimeout(timer.current);
      store();
    }
    const stop = subscribe({
      formState: { values: true },
      callback: () => {
        clearTimeout(timer.current);
        timer.current = setTimeout(store, QUIET_MILLIS);
      },
    });
    window.addEventListener('pagehide', storeIfWaiting);
    document.addEventListener('visibilitychange', storeIfWaiting);
    return () => {
      stop();
      storeIfWaiting();
      window.removeEventListener('pagehide', storeIfWaiting);
      document.removeEventListener('visibilitychange', storeIfWaiting);
    };
  }, [storageKey, leftOut, getValues, subscribe]);

  const clear = useCallback(() => {
    clearTimeout(timer.current);
    timer.current = undefined;
    removeStored(storageKey);
    setRestored(false);
  }, [storageKey]);

  return { restored, clear };
}
