import { useCallback, useEffect, useState } from 'react';
import type { Later } from './later';

export interface LaterState<Part> {
  /** Null while it is on its way. */
  part: Part | null;
  failed: boolean;
  retry: () => void;
}

/** A part that is fetched behind the first screen, for what cannot be drawn without it. */
export function useLater<Part>(later: Later<Part>): LaterState<Part> {
  const [part, setPart] = useState(() => later.now());
  const [failed, setFailed] = useState(false);
  const retry = useCallback(() => {
    setFailed(false);
    later.fetch().then(
      (come) => setPart(() => come),
      () => setFailed(true),
    );
  }, [later]);
  useEffect(() => {
    if (later.now() !== null) return;
    // What is on the screen is drawn first.
    const timer = setTimeout(retry, 0);
    window.addEventListener('online', retry);
    return () => {
      clearTimeout(timer);
      window.removeEventListener('online', retry);
    };
  }, [later, retry]);
  return { part, failed, retry };
}
