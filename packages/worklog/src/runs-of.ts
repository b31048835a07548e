import type { StageId, StageRun } from '@halfshaft/itinerary';
import type { EntryId, StageConfirmation } from './model';

/**
 * What the crew of one car confirmed of its stages, as the wear of its cards is computed from it.
 *
 * @example
 * runsOf(state.stages.values(), entryId).get('SS3') // { stageId: 'SS3', driven: false, conditions: {} }
 */
export function runsOf(stages: Iterable<StageConfirmation>, entryId: EntryId): Map<StageId, StageRun> {
  const runs = new Map<StageId, StageRun>();
  for (const { entryId: driver, stageId, driven, conditions } of stages) {
    if (driver === entryId) runs.set(stageId, { stageId, driven, conditions });
  }
  return runs;
}
