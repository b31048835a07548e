import { DEFAULT_START_INTERVAL_SECONDS } from './due-at';
import type { Itinerary } from './model';

/**
 * An itinerary whose printed column is for car 0, a notional car one interval ahead of position 1, with its times
 * moved on to position 1. Each section moves by its own first interval; where two sections differ, the control that
 * opens the later one gains the difference of its target time, so that target and clock still agree. A difference
 * that would leave no target time leaves none printed.
 *
 * "Standard time of a notional car 0, plus number × interval": Motorsport UK National Competition Rules 2026,
 * chapter 13.
 *
 * @example
 * fromCarZero(itinerary).points[0].firstCarAt // 60 s later where cars follow each minute
 */
export function fromCarZero(itinerary: Itinerary): Itinerary {
  const intervalOf = (section: number) =>
    itinerary.startBlocks.find((block) => block.section === section && block.fromPosition === 1)
      ?.intervalSeconds ?? DEFAULT_START_INTERVAL_SECONDS;
  const points = itinerary.points.map((point, index) => {
    const interval = intervalOf(point.section);
    const moved = { ...point, firstCarAt: point.firstCarAt + interval };
    const before = itinerary.points[index - 1];
    if (moved.kind === 'stage' || moved.allowedSeconds === null || !before) return moved;
    const allowedSeconds = moved.allowedSeconds + interval - intervalOf(before.section);
    return { ...moved, allowedSeconds: allowedSeconds > 0 ? allowedSeconds : null };
  });
  return { ...itinerary, points };
}
