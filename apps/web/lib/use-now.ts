import { useEffect, useState } from 'react';
import { useClock } from './clock';

const MILLIS_IN_SECOND = 1000;

/**
 * The time in whole seconds since the epoch, told again at each new second. Null in the static page and on the first
 * render, since the moment a page was built is never the moment it is read.
 */
export function useNow(): number | null {
  const clock = useClock();
  const [now, setNow] = useState<number | null>(null);

  useEffect(() => {
    let timer: ReturnType<typeof setTimeout>;
    function tick() {
      const millis = clock.now();
      setNow(Math.floor(millis / MILLIS_IN_SECOND));
      // Aim at the next full second, so that two clocks on one screen turn over together.
      timer = setTimeout(tick, MILLIS_IN_SECOND - (millis % MILLIS_IN_SECOND));
    }
    tick();
    return () => clearTimeout(timer);
  }, [clock]);

  return now;
}
