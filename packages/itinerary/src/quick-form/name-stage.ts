import type { StagePoint } from '../model';
import type { QuickStage } from './quick-form';

/**
 * What a stage without a name is called: as the one it repeats, with a run mark, so that it is known as its repeat; else
 * by its id. A super special of another length is another one.
 */
export function nameStage(
  id: string,
  { name, superSpecial = false, metres }: QuickStage,
  repeated: StagePoint | null,
  earlier: readonly StagePoint[],
): string {
  const given = name?.trim() ?? '';
  if (given !== '') return given;
  if (repeated) return againName(repeated, earlier);
  if (!superSpecial) return id;
  const first = earlier.find((stage) => stage.name === SUPER_SPECIAL);
  return first && first.stageMetres !== metres ? `${SUPER_SPECIAL} ${id}` : SUPER_SPECIAL;
}

const SUPER_SPECIAL = 'Super special';

function againName(repeated: StagePoint, earlier: readonly StagePoint[]): string {
  const rootId = repeated.repeatOf ?? repeated.id;
  const root = earlier.find((stage) => stage.id === rootId) ?? repeated;
  const runs = earlier.filter((stage) => stage.repeatOf === rootId).length;
  return `${root.name} (${runs + 2})`;
}
