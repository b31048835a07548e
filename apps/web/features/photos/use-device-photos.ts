import { useEffect, useState } from 'react';
import { devicePhotos } from '../work/hold-store';

type Owned = Awaited<ReturnType<typeof devicePhotos.listOwners>>[number];

/** Whose pictures wait on this device, one row a picture, of every event. */
export function useDevicePhotos(): readonly Owned[] {
  const [owned, setOwned] = useState<readonly Owned[]>([]);
  useEffect(() => {
    let isGone = false;
    const look = () => {
      void devicePhotos
        .listOwners()
        .then((found) => isGone || setOwned(found))
        .catch(() => undefined); // no database: pictures live in their own page only, which says so
    };
    look();
    const forget = devicePhotos.hear(look);
    return () => {
      isGone = true;
      forget();
    };
  }, []);
  return owned;
}
