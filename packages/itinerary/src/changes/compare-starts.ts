import { DEFAULT_START_INTERVAL_SECONDS } from '../due-at';
import type { Itinerary } from '../model';
import { type PositionsBySection, positionIn } from '../position-in';
import type { IntervalBlock, ItineraryChange } from './itinerary-change';

/** Start intervals of the sections, and this car's positions in them. */
export function compareStarts(
  before: Itinerary,
  after: Itinerary,
  positions: { before: PositionsBySection; after: PositionsBySection },
): ItineraryChange[] {
  const sections = [...new Set(after.points.map((point) => point.section))];
  const earlier = new Set(before.points.map((point) => point.section));
  const intervals = sections.flatMap((section) => {
    const change = {
      kind: 'startInterval' as const,
      section,
      before: blocksOf(before, section),
      after: blocksOf(after, section),
    };
    const isSame = JSON.stringify(change.before) === JSON.stringify(change.after);
    return isSame || !earlier.has(section) ? [] : [change];
  });
  let told = { before: 0, after: 0 };
  const moved = sections.flatMap((section) => {
    const pair = {
      before: positionIn(positions.before, section),
      after: positionIn(positions.after, section),
    };
    const isTold = pair.before === told.before && pair.after === told.after;
    told = pair;
    return pair.before === pair.after || isTold ? [] : [{ kind: 'startPosition' as const, section, ...pair }];
  });
  return [...intervals, ...moved];
}

/** A section without a block means one of 60 seconds. */
function blocksOf(itinerary: Itinerary, section: number): IntervalBlock[] {
  const blocks = itinerary.startBlocks
    .filter((block) => block.section === section)
    .map(({ fromPosition, intervalSeconds }) => ({ fromPosition, intervalSeconds }));
  return blocks.length > 0 ? blocks : [{ fromPosition: 1, intervalSeconds: DEFAULT_START_INTERVAL_SECONDS }];
}
