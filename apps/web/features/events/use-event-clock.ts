import { useEffect, useState } from 'react';
import { useClock } from '@/lib/clock';
import { type EventClockSource, eventClockAhead } from './event-seconds';

const MILLIS_IN_SECOND = 1000;

/** When each copy of an event was first seen on this device, for callers who cannot tell when it arrived. */
const firstSeen = new WeakMap<EventClockSource, number>();

/**
 * The event's official clock in whole seconds since the epoch, told again at each of its new seconds. Null until the
 * event is known and on the first render. Pass `query.dataUpdatedAt` as `receivedAt`: without it the moment this copy
 * was first looked at is taken, which is late when it lay in store.
 *
 * @example
 * const event = useQuery(api.event.get.queryOptions({ teamId, eventId }));
 * const now = useEventClock(event.data, event.dataUpdatedAt);
 */
export function useEventClock(source: EventClockSource | undefined, receivedAt?: number): number | null {
  const clock = useClock();
  const [seconds, setSeconds] = useState<number | null>(null);

  useEffect(() => {
    if (source === undefined) {
      setSeconds(null);
      return;
    }
    const seenAt = firstSeen.get(source) ?? clock.now();
    firstSeen.set(source, seenAt);
    const ahead = eventClockAhead(source, receivedAt || seenAt);
    let timer: ReturnType<typeof setTimeout>;
    function tick() {
      const millis = clock.now() + ahead;
      setSeconds(Math.floor(millis / MILLIS_IN_SECOND));
      // Aim at the next full second, so that two clocks on one screen turn over together.
      timer = setTimeout(tick, MILLIS_IN_SECOND - (millis % MILLIS_IN_SECOND));
    }
    tick();
    return () => clearTimeout(timer);
  }, [source, receivedAt, clock]);

  return seconds;
}
