import type { Draft, DraftPoint, DraftProblem } from './draft';
import { MAX_SECTION } from './limits';

/** The order of legs, sections, stages and their controls. */
export function checkOrder(draft: Draft): DraftProblem[] {
  return draft.points.flatMap((point, pointIndex) => {
    const before = draft.points[pointIndex - 1] ?? null;
    const problems = checkNumbers(point, before);
    if (point.kind === 'stage')
      problems.push(...checkStage(point, before, draft.points[pointIndex + 1] ?? null));
    return problems.map((problem) => ({ pointIndex, ...problem }));
  });
}

type Unplaced = Omit<DraftProblem, 'pointIndex'>;

function checkNumbers(point: DraftPoint, before: DraftPoint | null): Unplaced[] {
  const problems: Unplaced[] = [];
  const leg = before?.leg ?? 0;
  const section = before?.section ?? 0;
  const isNewLeg = point.leg !== leg;
  if (!Number.isInteger(point.leg) || point.leg < Math.max(leg, 1) || point.leg > leg + 1) {
    problems.push({
      key: 'id',
      code: 'leg-out-of-order',
      message: `${point.label} is in leg ${point.leg}, after leg ${leg}. Number the legs 1, 2, 3 in driving order.`,
    });
  }
  const isNumber = Number.isInteger(point.section) && point.section <= MAX_SECTION;
  if (!isNumber || point.section < Math.max(section, 1)) {
    problems.push({
      key: 'section',
      code: 'section-order',
      message: `${point.label} is in section ${point.section}, after section ${section}. Number the sections upwards through the whole event.`,
    });
  } else if (before && isNewLeg && point.section === section) {
    problems.push({
      key: 'section',
      code: 'section-order',
      message: `${point.label} begins a new leg but is still in section ${section}. Give it the next section's number.`,
    });
  }
  return problems;
}

function checkStage(stage: DraftPoint, before: DraftPoint | null, after: DraftPoint | null): Unplaced[] {
  const problems: Unplaced[] = [];
  const ownControl = `TC${/\d+/.exec(stage.id)?.[0] ?? ''}`;
  const isControlled = before?.kind === 'control' && before.leg === stage.leg && !before.id.startsWith('RZ');
  if (!isControlled) {
    problems.push({
      key: 'id',
      code: 'stage-without-control',
      message: `${stage.label} has no time control before it. Add the row of its control, ${ownControl}, above it.`,
    });
  } else if (/\d+/.exec(before.id)?.[0] !== /\d+/.exec(stage.id)?.[0]) {
    problems.push({
      key: 'id',
      code: 'stage-control-number',
      message: `${stage.label} starts after ${before.label}; a stage's control usually has the stage's number, ${ownControl}. Check that no row is missing.`,
    });
  }
  if (after?.kind !== 'control' || after.leg !== stage.leg) {
    problems.push({
      key: 'id',
      code: 'stage-without-next-control',
      message: `No control follows ${stage.label} in its leg. Add the control the cars drive to after the stage.`,
    });
  }
  return problems;
}
