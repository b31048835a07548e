import type { ConditionName, Conditions, StageId } from '@halfshaft/itinerary';
import { LEVELS, levelInWords } from '../bay/conditions-in-words';

export type Planned = Record<StageId, Conditions>;

/**
 * One tap on a condition of a stage: none, some, bad, and none again. A stage of which nothing is left is not named.
 *
 * @example
 * tapCondition({}, 'SS3', 'night') // { SS3: { night: 500 } }
 */
export function tapCondition(planned: Planned, stageId: StageId, name: ConditionName): Planned {
  const { [stageId]: stage = {}, ...others } = planned;
  const { [name]: level = 0, ...rest } = stage;
  const place = LEVELS.findIndex(({ words }) => words === levelInWords(level));
  const next = LEVELS[(place + 1) % LEVELS.length]?.perMille ?? 0;
  const after = next === 0 ? rest : { ...rest, [name]: next };
  return Object.keys(after).length === 0 ? others : { ...others, [stageId]: after };
}
