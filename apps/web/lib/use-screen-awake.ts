import { useEffect } from 'react';

/** Keeps the screen from going dark while the page is looked at, where the browser can (over https only). */
export function useScreenAwake(): void {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let isGone = false;
    async function ask() {
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      // Refused when the battery is low: the screen then goes dark as ever.
      const given = await navigator.wakeLock.request('screen').catch(() => null);
      if (isGone) void given?.release();
      else lock = given;
    }
    void ask();
    // The browser lets go of it whenever another page is in front.
    document.addEventListener('visibilitychange', ask);
    return () => {
      isGone = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, []);
}
