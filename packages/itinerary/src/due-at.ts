import type { EpochSeconds, Itinerary } from './model';
import { positionIn, type StartPosition } from './position-in';
import { requirePoint } from './require-way';

/** Seconds between two cars where a section names no interval. */
export const DEFAULT_START_INTERVAL_SECONDS = 60;

/**
 * When the car in start position `position` is due at a point if nothing runs late: the first car's time plus, for
 * each position from 2 on, the interval of the start block that position falls in. Blocks are those of the point's
 * own section, since order and interval are set anew at each regroup; where the car's positions are given by section,
 * so is the position.
 *
 * Planned timing after "due = first car due + (position - 1) × interval" (common practice). Throws when there is no
 * such point or when the position is not a whole number from 1, and as `positionIn` does.
 *
 * @example
 * dueAt(itinerary, 0, 3) // the first car's time + 120 where cars follow at 60 s
 */
export function dueAt(itinerary: Itinerary, pointIndex: number, start: StartPosition): EpochSeconds {
  const point = requirePoint('dueAt', itinerary, pointIndex);
  const position = typeof start === 'number' ? start : positionIn(start, point.section);
  if (!Number.isSafeInteger(position) || position < 1) {
    throw new RangeError(`dueAt: a start position is a whole number from 1, not ${position}`);
  }
  const blocks = itinerary.startBlocks
    .filter((block) => block.section === point.section)
    .sort((one, other) => one.fromPosition - other.fromPosition);
  let followed = 1;
  let interval = DEFAULT_START_INTERVAL_SECONDS;
  let seconds = 0;
  for (const block of blocks) {
    const until = Math.min(Math.max(block.fromPosition - 1, followed), position);
    seconds += (until - followed) * interval;
    followed = until;
    interval = block.intervalSeconds;
  }
  return point.firstCarAt + seconds + (position - followed) * interval;
}
