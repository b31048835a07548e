import type { StageId } from './model';

/**
 * The stage that a stage repeats, by name: the earliest with the same name but for the run mark at its end, `(I)`,
 * `(II)`, `II`, `2`. Null when no earlier stage has that name.
 *
 * @example
 * findRepeat('Quarry (II)', [{ id: 'SS2', name: 'Quarry (I)' }]) // 'SS2'
 */
export function findRepeat(
  name: string,
  earlierStages: readonly { id: StageId; name: string }[],
): StageId | null {
  const bare = withoutRunMark(name);
  return earlierStages.find((stage) => withoutRunMark(stage.name) === bare)?.id ?? null;
}

function withoutRunMark(name: string): string {
  const bare = name.replace(/ ?\((?:[IVX]{1,4}|\d{1,2})\)$/i, '').replace(/ (?:I{1,3}|IV|V|\d{1,2})$/, '');
  return bare.toLowerCase();
}
