import type { ControlPoint, Itinerary, StagePoint } from '../model';
import { type CommonPoint, commonPoints, missingPoints } from './common-points';
import type { ItineraryChange } from './itinerary-change';

/** Stages and controls that came, went, or are not as they were; times and order apart. */
export function comparePoints(before: Itinerary, after: Itinerary): ItineraryChange[] {
  const common = commonPoints(before, after);
  return [
    ...missingPoints(before, after).map(
      ({ point }): ItineraryChange =>
        point.kind === 'stage'
          ? { kind: 'stageCancelled', stageId: point.id, name: point.name, metres: point.stageMetres }
          : { kind: 'controlRemoved', id: point.id, name: point.name },
    ),
    ...missingPoints(after, before).map(
      ({ point, afterId }): ItineraryChange =>
        point.kind === 'stage'
          ? { kind: 'stageAdded', stageId: point.id, name: point.name, metres: point.stageMetres, afterId }
          : { kind: 'controlAdded', id: point.id, name: point.name, afterId },
    ),
    ...common.flatMap(comparePoint),
    ...compareNumbering(common, 'leg'),
    ...compareNumbering(common, 'section'),
  ];
}

function comparePoint({ before, after }: CommonPoint): ItineraryChange[] {
  const changes: ItineraryChange[] = [];
  if (before.name !== after.name)
    changes.push({ kind: 'renamed', id: after.id, before: before.name, after: after.name });
  if (before.kind === 'stage' && after.kind === 'stage') changes.push(...compareStage(before, after));
  if (before.kind === 'control' && after.kind === 'control') changes.push(...compareControl(before, after));
  return changes;
}

function compareStage(before: StagePoint, after: StagePoint): ItineraryChange[] {
  const stageId = after.id;
  const changes: ItineraryChange[] = [];
  if (before.stageMetres !== after.stageMetres) {
    changes.push({
      kind: 'stageLength',
      stageId,
      beforeMetres: before.stageMetres,
      afterMetres: after.stageMetres,
    });
  }
  if (before.gapSeconds !== after.gapSeconds) {
    changes.push({
      kind: 'stageGap',
      stageId,
      beforeSeconds: before.gapSeconds,
      afterSeconds: after.gapSeconds,
    });
  }
  if (before.repeatOf !== after.repeatOf) {
    changes.push({ kind: 'stageRepeat', stageId, before: before.repeatOf, after: after.repeatOf });
  }
  return changes;
}

function compareControl(before: ControlPoint, after: ControlPoint): ItineraryChange[] {
  const { id } = after;
  const changes: ItineraryChange[] = [];
  if (before.roadMetres !== after.roadMetres) {
    changes.push({ kind: 'roadLength', id, beforeMetres: before.roadMetres, afterMetres: after.roadMetres });
  }
  if (before.allowedSeconds !== after.allowedSeconds) {
    changes.push({
      kind: 'targetTime',
      id,
      beforeSeconds: before.allowedSeconds,
      afterSeconds: after.allowedSeconds,
    });
  }
  if (before.roles.join() !== after.roles.join())
    changes.push({ kind: 'roles', id, before: before.roles, after: after.roles });
  return changes;
}

/** Legs and sections numbered anew, told once for a run of points. */
function compareNumbering(common: readonly CommonPoint[], of: 'leg' | 'section'): ItineraryChange[] {
  const changes: Extract<ItineraryChange, { kind: 'numbering' }>[] = [];
  let isRun = false;
  for (const { before, after } of common) {
    const last = changes.at(-1);
    const isChanged = before[of] !== after[of];
    if (isChanged && isRun && last?.before === before[of] && last.after === after[of]) last.toId = after.id;
    else if (isChanged) {
      changes.push({
        kind: 'numbering',
        of,
        fromId: after.id,
        toId: after.id,
        before: before[of],
        after: after[of],
      });
    }
    isRun = isChanged;
  }
  return changes;
}
