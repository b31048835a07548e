import { dueAt } from '../due-at';
import type { Itinerary } from '../model';
import type { PositionsBySection } from '../position-in';
import { commonPoints } from './common-points';
import type { ItineraryChange } from './itinerary-change';

/** This car's times that moved, told once for a run of points that moved by the same. */
export function compareTimes(
  before: Itinerary,
  after: Itinerary,
  positions: { before: PositionsBySection; after: PositionsBySection },
): ItineraryChange[] {
  const changes: Extract<ItineraryChange, { kind: 'timesMoved' }>[] = [];
  let runSeconds = 0;
  for (const point of commonPoints(before, after)) {
    const beforeAt = dueAt(before, point.beforeIndex, positions.before);
    const afterAt = dueAt(after, point.afterIndex, positions.after);
    const seconds = afterAt - beforeAt;
    const { id } = point.after;
    const last = changes.at(-1);
    if (seconds !== 0 && seconds === runSeconds && last) {
      last.toId = id;
      last.points += 1;
    } else if (seconds !== 0) {
      const { timeZone } = after;
      changes.push({
        kind: 'timesMoved',
        fromId: id,
        toId: id,
        points: 1,
        seconds,
        beforeAt,
        afterAt,
        timeZone,
      });
    }
    runSeconds = seconds;
  }
  return changes;
}
