import type { EpochSeconds } from '@halfshaft/itinerary';
import type { JobCard } from '@halfshaft/lifing';

/** Done while the car is closed up, not before. A team's own cards are not known for it and count as before: the safe side. */
const CLOSING_UP: ReadonlySet<string | null> = new Set(['starter:wheel-nuts', 'starter:walk-round']);

export interface CarCloses {
  /** When the wheels must begin to go on. */
  wheelsOnAt: EpochSeconds;
  /** When the car must leave. */
  outAt: EpochSeconds;
}

/**
 * The latest start of one job that still ends before the wheels go on: of a closing job, before the car leaves. Of this
 * job alone, by the minutes of its card: that one person has several jobs, or that a jack is wanted twice, is not in it.
 *
 * @example
 * lastSafeStart({ starterId: null, seconds: 300 }, { wheelsOnAt: 900, outAt: 1200 }) // 600
 */
export function lastSafeStart(
  { starterId, seconds }: Pick<JobCard, 'starterId' | 'seconds'>,
  { wheelsOnAt, outAt }: CarCloses,
): EpochSeconds {
  return (CLOSING_UP.has(starterId) ? outAt : wheelsOnAt) - seconds;
}
