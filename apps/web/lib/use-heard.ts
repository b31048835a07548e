import { useEffect, useState } from 'react';

/** Something on this device that changes, here or in another tab. Both stay the same functions from call to call. */
export interface Heard<T> {
  read(): Promise<T>;
  /** The returned function stops hearing. */
  hear(listener: () => void): () => void;
}

/**
 * What is kept on this device, read again at each change. `none` until it has been read, or where nothing can be.
 *
 * @example
 * const waiting = useHeard(DEVICE_OUTBOX, null);
 */
export function useHeard<T, None>({ read, hear }: Heard<T>, none: None): T | None {
  const [kept, setKept] = useState<T | None>(none);
  useEffect(() => {
    let isGone = false;
    const look = () => {
      void read()
        .then((found) => isGone || setKept(() => found))
        .catch(() => undefined); // no database: what there is lives in its own page only, which says so
    };
    look();
    const forget = hear(look);
    return () => {
      isGone = true;
      forget();
    };
  }, [read, hear]);
  return kept;
}
