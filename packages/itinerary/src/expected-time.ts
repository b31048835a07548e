import { type Draft, timedFrom } from './draft';
import { isInstant } from './is-instant';
import type { EpochSeconds } from './model';
import { estimateStageEnd } from './stage-end';

/** What a point's time should be from the time before it, and what it was reckoned from. */
export interface ExpectedTime {
  at: EpochSeconds;
  /** Label of the point it counts from. */
  from: string;
  fromAt: EpochSeconds;
  seconds: number;
  /** A stage's finish is nowhere printed, so a time counted from it is an estimate and no check. */
  isEstimate: boolean;
}

/**
 * The first car's time at a point by the target time (at a stage: by the gap) from the point it is timed from; null
 * where no target is printed or the time before is unknown.
 */
export function expectedTime(draft: Draft, index: number): ExpectedTime | null {
  const point = draft.points[index];
  if (!point) return null;
  const from = timedFrom(draft.points, index);
  const seconds = point.kind === 'stage' ? point.gapSeconds : point.allowedSeconds;
  if (!from || from.at === null || !isInstant(from.at) || seconds === null) return null;
  const isEstimate = from.kind === 'stage' && draft.roadTimedFrom === 'stageFinish';
  if (isEstimate && from.metres === null) return null;
  const fromAt = isEstimate ? finishOf(from.at, from.metres ?? 0) : from.at;
  return { at: fromAt + seconds, from: from.label, fromAt, seconds, isEstimate };
}

/** Minutes are cut: a time printed to the minute agrees with any second of it. */
export function agrees(printed: EpochSeconds, expected: EpochSeconds): boolean {
  return printed === expected || (printed % 60 === 0 && Math.floor(expected / 60) * 60 === printed);
}

function finishOf(stageStartsAt: EpochSeconds, stageMetres: number): EpochSeconds {
  const finish = estimateStageEnd({
    stageStartsAt,
    stageMetres: Math.max(0, stageMetres),
    roadMetres: 0,
    nextControlAt: null,
    allowedSeconds: null,
    roadTimedFrom: 'stageFinish',
  });
  return Math.floor(finish / 60) * 60;
}
