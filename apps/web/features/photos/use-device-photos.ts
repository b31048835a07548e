import { useHeard } from '@/lib/use-heard';
import { devicePhotos } from '../work/hold-store';

type Owned = Awaited<ReturnType<typeof devicePhotos.listOwners>>[number];

const NONE: readonly Owned[] = [];
const OWNERS = {
  read: () => devicePhotos.listOwners(),
  hear: (listener: () => void) => devicePhotos.hear(listener),
};

/** Whose pictures wait on this device, one row a picture, of every event. */
export function useDevicePhotos(): readonly Owned[] {
  return useHeard(OWNERS, NONE);
}
