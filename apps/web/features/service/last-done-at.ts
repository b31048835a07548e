import type { EventReplica } from '@halfshaft/contract';
import type { ServiceWindow } from '@halfshaft/itinerary';
import type { LastDone } from '@halfshaft/lifing';
import { type CardId, fittedAt, lastDoneOf, type WorkState } from '@halfshaft/worklog';
import type { Visit } from './visit';

/**
 * When each card of the car was last done, by the work at these services and by new parts that went on up to a point of
 * the route, the point included.
 */
export function lastDoneAt(
  replica: EventReplica,
  state: WorkState,
  { entry }: Visit,
  { services, pointIndex }: { services: readonly ServiceWindow[]; pointIndex: number },
): Map<CardId, LastDone> {
  const { entryId, cards, carried } = entry;
  const fitted = fittedAt(state.facts.values(), replica.itinerary, entryId, cards, pointIndex);
  return lastDoneOf(state.tasks.values(), services, entryId, carried, fitted);
}
