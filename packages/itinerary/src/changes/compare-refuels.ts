import type { Itinerary } from '../model';
import { routeMetresAt } from '../route-counters';
import type { ItineraryChange } from './itinerary-change';

/** Distances from one refuel to the next, stages and road together; the way begins at `start` and ends at `finish`. */
export function compareRefuels(before: Itinerary, after: Itinerary): ItineraryChange[] {
  const earlier = stretchesOf(before);
  const later = stretchesOf(after);
  if (earlier.length < 2 && later.length < 2) return [];
  return later.flatMap(({ fromId, toId, metres }) => {
    const same = earlier.find((one) => one.fromId === fromId && one.toId === toId);
    if (same?.metres === metres) return [];
    return [
      { kind: 'refuelGap' as const, fromId, toId, beforeMetres: same?.metres ?? null, afterMetres: metres },
    ];
  });
}

function stretchesOf(itinerary: Itinerary): { fromId: string; toId: string; metres: number }[] {
  const stops = itinerary.points.flatMap((point, index) =>
    point.kind === 'control' && point.roles.includes('refuel') ? [{ id: point.id, index }] : [],
  );
  const ends = [{ id: 'start', index: 0 }, ...stops, { id: 'finish', index: itinerary.points.length - 1 }];
  return ends.slice(1).flatMap((to, order) => {
    const from = ends[order];
    if (!from || itinerary.points.length === 0) return [];
    const metres = routeMetresAt(itinerary, to.index) - routeMetresAt(itinerary, from.index);
    return [{ fromId: from.id, toId: to.id, metres }];
  });
}
