import type { EventReplica } from '@halfshaft/contract';
import type { StageId, StagePoint } from '@halfshaft/itinerary';
import { type StageConfirmation, stageKeyOf, type WorkState } from '@halfshaft/worklog';
import type { Visit } from '../service/visit';

export interface StageBefore {
  stage: StagePoint;
  /** What was last said of it, or null. */
  said: StageConfirmation | null;
  /** Driven since the service before this one. */
  isRecent: boolean;
}

/** The stages that lie before a service, in driving order. */
export function stagesBefore(replica: EventReplica, state: WorkState, visit: Visit): StageBefore[] {
  const { entry, service, services, serviceIndex } = visit;
  const sinceIndex = services[serviceIndex - 1]?.inIndex ?? -1;
  return replica.itinerary.points.flatMap((point, index) => {
    if (point.kind !== 'stage' || index > service.inIndex) return [];
    const key = stageKeyOf({ entryId: entry.entryId, stageId: point.id });
    return [{ stage: point, said: state.stages.get(key) ?? null, isRecent: index > sinceIndex }];
  });
}

/** The same by name, the last one first: where something that is told now most likely was. */
export function stageIdsBack(replica: EventReplica, state: WorkState, visit: Visit): StageId[] {
  return stagesBefore(replica, state, visit)
    .map(({ stage }) => stage.id)
    .reverse();
}
