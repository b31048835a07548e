import type { EpochSeconds, StagePoint } from './model';

/**
 * The minute a control writes for an instant. Minutes are cut, never rounded: 9:59 counts as 9.
 *
 * @example
 * toWholeMinute(599) // 540
 */
export function toWholeMinute(instant: EpochSeconds): EpochSeconds {
  if (!Number.isFinite(instant)) throw new RangeError(`toWholeMinute: ${instant} is no instant`);
  return Math.floor(instant / 60) * 60;
}

/**
 * When a car that checked in at a stage's time control is meant to start the stage: the minute written at the
 * control plus the stage's gap. The start the marshal writes replaces it.
 *
 * @example
 * stageStartAt({ gapSeconds: 180, … }, 659) // 780: checked in at minute 10, starts at minute 13
 */
export function stageStartAt(stage: Pick<StagePoint, 'gapSeconds'>, checkedInAt: EpochSeconds): EpochSeconds {
  return toWholeMinute(checkedInAt) + stage.gapSeconds;
}
