import { useHeard } from '@/lib/use-heard';
import { deviceBox } from './hold-store';
import type { WaitingAction } from './waiting-action';

const WAITING = {
  read: async () => {
    await deviceBox.device();
    return (await deviceBox.readAll()).waiting;
  },
  hear: (listener: () => void) => deviceBox.hear(listener),
};

/** All that waits on this device, of every person and event. Null until it has been read, or where nothing can be. */
export function useDeviceOutbox(): readonly WaitingAction[] | null {
  return useHeard(WAITING, null);
}
