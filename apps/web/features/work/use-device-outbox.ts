import { useEffect, useState } from 'react';
import { deviceBox } from './hold-store';
import type { WaitingAction } from './waiting-action';

/** All that waits on this device, of every person and event. Null until it has been read, or where nothing can be. */
export function useDeviceOutbox(): readonly WaitingAction[] | null {
  const [waiting, setWaiting] = useState<readonly WaitingAction[] | null>(null);
  useEffect(() => {
    let isGone = false;
    const look = () => {
      void deviceBox
        .device()
        .then(() => deviceBox.readAll())
        .then((found) => isGone || setWaiting(found.waiting))
        .catch(() => undefined); // no database: what waits lives in its own page only, which says so
    };
    look();
    const forget = deviceBox.hear(look);
    return () => {
      isGone = true;
      forget();
    };
  }, []);
  return waiting;
}
