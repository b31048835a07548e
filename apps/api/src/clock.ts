/** The one clock of the process, handed in so that tests and the demo can set it. */
export interface Clock {
  /** Milliseconds since the epoch. */
  now(): number;
}

export const systemClock: Clock = { now: () => Date.now() };

/** For the store, whose columns hold dates. Takes milliseconds since the epoch, or a day as `YYYY-MM-DD`. */
export function toDate(at: number | string): Date {
  return new Date(at);
}

/** A day of the store as `YYYY-MM-DD`. */
export function toDay(date: Date): string {
  return date.toISOString().slice(0, 10);
}
