import type { Itinerary } from '../model';
import { commonPoints } from './common-points';
import type { ItineraryChange } from './itinerary-change';

/** Points that stand in another place of the order: the fewest whose moving explains the new order. */
export function findMoved(before: Itinerary, after: Itinerary): ItineraryChange[] {
  const common = commonPoints(before, after);
  const stayed = longestRising(common.map((point) => point.beforeIndex));
  return common.flatMap(({ after: point, afterIndex }, order) =>
    stayed.has(order)
      ? []
      : [{ kind: 'order' as const, id: point.id, afterId: after.points[afterIndex - 1]?.id ?? null }],
  );
}

/** Which places make up the longest rising row of numbers. */
function longestRising(numbers: readonly number[]): Set<number> {
  const lengths: number[] = [];
  const previous: number[] = [];
  let end = -1;
  numbers.forEach((number, index) => {
    let best = -1;
    for (let before = 0; before < index; before += 1) {
      const isLower = (numbers[before] ?? number) < number;
      if (isLower && (best === -1 || (lengths[before] ?? 0) > (lengths[best] ?? 0))) best = before;
    }
    lengths.push((best === -1 ? 0 : (lengths[best] ?? 0)) + 1);
    previous.push(best);
    if (end === -1 || (lengths[index] ?? 0) > (lengths[end] ?? 0)) end = index;
  });
  const places = new Set<number>();
  for (let index = end; index >= 0; index = previous[index] ?? -1) places.add(index);
  return places;
}
