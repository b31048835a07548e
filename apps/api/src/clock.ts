/** The one clock of the process, handed in so that tests and the demo can set it. */
export interface Clock {
  /** Milliseconds since the epoch. */
  now(): number;
}

export const systemClock: Clock = { now: () => Date.now() };
