import type { EpochSeconds, Itinerary } from './model';

const ESTIMATED_STAGE_METRES_PER_HOUR = 80_000;

/** What is known of a stage and the road that follows it, up to the next timed control. */
export interface StageBlock {
  stageStartsAt: EpochSeconds;
  stageMetres: number;
  /** Road from the stage's finish to the next timed control. */
  roadMetres: number;
  /** Due time of the first car at that control; null while it is not known yet. */
  nextControlAt: EpochSeconds | null;
  /** Target time printed at that control; null where none is printed. */
  allowedSeconds: number | null;
  roadTimedFrom: Itinerary['roadTimedFrom'];
}

/**
 * When the first car leaves a stage: an estimate, in whole seconds. It is good for drawing and for placing a limit
 * along the route; no penalty may rest on it, since no itinerary prints this time.
 *
 * Where the road is timed from the stage's finish and both the next control's clock and its target time are known,
 * their difference is the finish. Otherwise the stage is driven at 80 km/h (common practice, no source), but never
 * slower than the stage and its road together, so that the road keeps at least its share of the time allowed.
 *
 * @example
 * estimateStageEnd({ stageStartsAt: 0, stageMetres: 16_650, roadMetres: 19_530, nextControlAt: 2640,
 *   allowedSeconds: 2640, roadTimedFrom: 'stageStart' }) // 749
 */
export function estimateStageEnd(block: StageBlock): EpochSeconds {
  const { stageStartsAt, stageMetres, roadMetres, nextControlAt, allowedSeconds } = block;
  const stageSeconds = Math.floor((stageMetres * 3600) / ESTIMATED_STAGE_METRES_PER_HOUR);
  if (nextControlAt === null) return stageStartsAt + stageSeconds;
  const blockSeconds = Math.max(0, nextControlAt - stageStartsAt);
  if (block.roadTimedFrom === 'stageFinish' && allowedSeconds !== null) {
    return stageStartsAt + Math.max(0, blockSeconds - allowedSeconds);
  }
  const blockMetres = stageMetres + roadMetres;
  const shareSeconds = blockMetres === 0 ? 0 : Math.floor((blockSeconds * stageMetres) / blockMetres);
  return stageStartsAt + Math.min(stageSeconds, shareSeconds);
}
