import type { EventReplica } from '@halfshaft/contract';
import type { Conditions, StageId } from '@halfshaft/itinerary';

/** What the managers expect of the stages, as the verdicts ask for it. */
export function plannedOf({ plannedConditions }: EventReplica): ReadonlyMap<StageId, Conditions> {
  return new Map(Object.entries(plannedConditions));
}
