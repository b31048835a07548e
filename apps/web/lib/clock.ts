import { createContext, useContext } from 'react';

/** Where the time comes from. Tests, the demo and the event's official clock put their own in. */
export interface Clock {
  /** Milliseconds since 1970-01-01T00:00:00Z. */
  now(): number;
}

export const systemClock: Clock = { now: () => Date.now() };

/** A clock that runs beside another one by a fixed difference, such as the event's clock beside the phone's. */
export function offsetClock(clock: Clock, offsetMillis: number): Clock {
  return { now: () => clock.now() + offsetMillis };
}

/** Put another clock in with `<ClockContext value={clock}>`. */
export const ClockContext = createContext<Clock>(systemClock);

export function useClock(): Clock {
  return useContext(ClockContext);
}
