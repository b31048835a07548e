import type { Draft, DraftProblem } from './draft';
import { excerpt } from './excerpt';

const ID = { stage: /^SSS?\d{1,3}[A-Z]?$/, control: /^(?:(?:[AM]?TC|MC)\d{1,3}[A-Z]{0,2}|RZ\d{1,3}[A-Z]?)$/ };

/** Names of controls and stages: well formed, used once, and a stage that repeats another names one before it. */
export function checkNames(draft: Draft): DraftProblem[] {
  const problems: DraftProblem[] = [];
  const firstOf = new Map<string, string>();
  const stagesBefore = new Set<string>();
  draft.points.forEach((point, pointIndex) => {
    const { id, label } = point;
    const tell = (key: DraftProblem['key'], code: DraftProblem['code'], message: string) =>
      problems.push({ pointIndex, key, code, message });
    if (!ID[point.kind].test(id)) {
      tell(
        'id',
        'id-malformed',
        `“${excerpt(id)}” is no name for a ${point.kind}. Write ${point.kind === 'stage' ? 'SS5' : 'TC5B or RZ1'}.`,
      );
    }
    const first = firstOf.get(id);
    if (first !== undefined) {
      tell(
        'id',
        'duplicate-id',
        `${label} has the same name as ${first}. Give each control and each stage a name of its own.`,
      );
    } else firstOf.set(id, label);
    if (/^[-–—]?$/.test(point.name.trim()))
      tell('location', 'name-missing', `${label} has no location. Write the place or the stage's name.`);
    if (
      point.kind === 'control' &&
      (point.roles.length === 0 || new Set(point.roles).size < point.roles.length)
    ) {
      tell(
        'role',
        'roles-malformed',
        `${label} needs at least one role and each role once. Write time control if it is nothing else.`,
      );
    }
    if (point.repeatOf !== null && !stagesBefore.has(point.repeatOf)) {
      tell(
        'repeatOf',
        'repeat-unknown',
        `${label} is said to repeat ${excerpt(point.repeatOf)}, but no stage before it has that name. Name an earlier stage or leave it empty.`,
      );
    }
    if (point.kind === 'stage') stagesBefore.add(id);
  });
  return problems;
}
