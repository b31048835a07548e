import type { EventReplica } from '@halfshaft/contract';
import type { ServiceWindow } from '@halfshaft/itinerary';
import type { LastDone } from '@halfshaft/lifing';
import { type CardId, lastDoneOf, type WorkState } from '@halfshaft/worklog';
import type { Visit } from './visit';

/** When each card of the car was last done, by the work at these services and by what was recorded up to a point of the route. */
export function lastDoneAt(
  replica: EventReplica,
  state: WorkState,
  { entry }: Visit,
  { services, pointIndex }: { services: readonly ServiceWindow[]; pointIndex: number },
): Map<CardId, LastDone> {
  const done = { tasks: state.tasks.values(), facts: state.facts.values() };
  return lastDoneOf(done, { itinerary: replica.itinerary, services, untilIndex: pointIndex }, entry);
}
