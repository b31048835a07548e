import type { RecordedFact } from './car-fact';
import type { ControlTime, Snag, StageConfirmation, Task } from './model';
import type { ActionRecord, StageRef, TimeRef, WorkState } from './state';
import { timeRefOf } from './time-key-of';

/** The rows to save after entries were applied. */
export interface WorkChanges {
  tasks: Task[];
  snags: Snag[];
  stages: StageConfirmation[];
  times: ControlTime[];
  facts: RecordedFact[];
  actions: ActionRecord[];
  /** Stages of which nothing is said any more: an undo of the first confirmation. */
  removedStages: StageRef[];
  /** Controls of which no time is recorded any more: an undo of the first recording. */
  removedTimes: TimeRef[];
}

/**
 * What differs between a state and a later one made from it by `apply`: the rows a projection must write.
 *
 * @example
 * changesOf(slice, applyAll(slice, entries)).tasks // the tasks touched, as they now stand
 */
export function changesOf(before: WorkState, after: WorkState): WorkChanges {
  const removedStages = [...before.stages].filter(([key]) => !after.stages.has(key));
  const removedTimes = [...before.times].filter(([key]) => !after.times.has(key));
  return {
    tasks: changed(before.tasks, after.tasks),
    snags: changed(before.snags, after.snags),
    stages: changed(before.stages, after.stages),
    times: changed(before.times, after.times),
    facts: changed(before.facts, after.facts),
    actions: changed(before.actions, after.actions),
    removedStages: removedStages.map(([, { entryId, stageId }]) => ({ entryId, stageId })),
    removedTimes: removedTimes.map(([, time]) => timeRefOf(time)),
  };
}

function changed<V>(before: ReadonlyMap<string, V>, after: ReadonlyMap<string, V>): V[] {
  return [...after].filter(([key, value]) => before.get(key) !== value).map(([, value]) => value);
}
