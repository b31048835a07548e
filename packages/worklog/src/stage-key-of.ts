import { joinIds } from './id-parts';
import type { StageKey, StageRef } from './state';

/**
 * The key of one stage of one car in `WorkState.stages`.
 *
 * @example
 * stageKeyOf({ entryId: 'e7', stageId: 'SS3' }) // 'e7~SS3'
 */
export function stageKeyOf(ref: StageRef): StageKey {
  return joinIds([ref.entryId, ref.stageId]);
}
