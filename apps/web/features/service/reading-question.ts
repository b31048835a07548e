import type { EventReplica } from '@halfshaft/contract';
import type { ReadingsQuestion } from '@halfshaft/lifing';
import { readingsOf, type WorkState } from '@halfshaft/worklog';
import { serviceNameOf } from '../work/names';
import type { Visit } from './visit';
import { visitQuestion } from './visit-question';

/** What judging a car's readings at one service starts from. */
export function readingQuestion(replica: EventReplica, state: WorkState, visit: Visit): ReadingsQuestion {
  const { entryId, car } = visit.entry;
  return {
    ...visitQuestion(replica, state, visit),
    history: readingsOf(state, replica.itinerary, entryId),
    surface: car.surface,
    serviceName: (id) => serviceNameOf(replica, id),
  };
}
