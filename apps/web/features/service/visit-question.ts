import type { EventReplica } from '@halfshaft/contract';
import { positionsOf } from '@halfshaft/itinerary';
import { runsOf, type WorkState } from '@halfshaft/worklog';
import { plannedOf } from '../conditions/planned-of';
import type { Visit } from './visit';

/** What judging a car's cards at one service starts from, whether by their limits or by what happened. */
export function visitQuestion(replica: EventReplica, state: WorkState, visit: Visit) {
  const { entry, services, serviceIndex } = visit;
  return {
    itinerary: replica.itinerary,
    services,
    serviceIndex,
    position: positionsOf(entry),
    cards: entry.cards,
    runs: runsOf(state.stages.values(), entry.entryId),
    plannedConditions: plannedOf(replica),
  };
}
