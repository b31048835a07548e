import { type Bounds, DEFAULT_LEVEL, type LevelOption, type Refusal } from '../model';
import { refuse } from '../refuse';
import { requireNumber } from '../require-number';
import { normalQuantile } from '../special/normal-quantile';
import { walkToRoot } from '../walk-to-root';
import type { PowerLaw } from './fit-power-law';
import type { TrendDirection } from './judge-trend';
import { refuseFewFailures } from './refuse-few-failures';

/** Failures counted between one look and the next: events, or halves of a season. */
export interface FailureGroup {
  /** Where the group ends; it starts where the one before it ends, the first at 0. */
  end: number;
  failures: number;
}

export interface GroupedPowerLawFit {
  ok: true;
  failures: number;
  end: number;
  maximumLikelihood: PowerLaw;
  /** Approximate, on the logarithm of the shape; groups leave no exact ones. */
  shapeBounds: Bounds;
  growth: { direction: TrendDirection; distanceSoFar: number; distanceNow: number; factor: number };
}

const FEWEST_FAILURES = 3;
/** Shapes between e^-5 and e^5; outside, the failures of one group hold no growth that could be told. */
const LOG_SHAPE_REACH = 5;

/**
 * The power law of reliability growth from counts alone, when nobody wrote down at which km each failure came.
 *
 * Assumptions as for `fitPowerLaw`. The shape that makes the counts likeliest (Crow, MIL-HDBK-189 (1981) appendix C,
 * grouped data); bounds from the curvature there. There is no bias correction for groups, so with few failures growth
 * looks a little smaller than it is.
 *
 * Refuses `tooFewFailures` (3), `tooFewGroups` (2), and `noSpread` when all failures lie in the first or in the last group.
 *
 * @throws RangeError when the ends do not rise or a count is not whole
 * @example
 * fitPowerLawGrouped([{ end: 200, failures: 2 }, { end: 400, failures: 1 }, { end: 600, failures: 1 }, { end: 3000, failures: 7 }])
 * // maximumLikelihood.shape 0.6315, rate 0.0701
 */
export function fitPowerLawGrouped(
  groups: readonly FailureGroup[],
  { level = DEFAULT_LEVEL }: LevelOption = {},
): GroupedPowerLawFit | Refusal<'tooFewFailures' | 'tooFewGroups' | 'noSpread'> {
  requireNumber('fitPowerLawGrouped', 'level', level, 'share');
  requireGroups(groups);
  const end = groups.at(-1)?.end;
  if (end === undefined || groups.length < 2) {
    return refuse('tooFewGroups', 'Growth needs the counts of at least 2 stretches.');
  }
  const failures = groups.reduce((sum, group) => sum + group.failures, 0);
  const refusal = refuseFewFailures(failures, FEWEST_FAILURES, 'growth');
  if (refusal) return refusal;

  const slope = (logShape: number) => slopeOfLikelihood(groups, end, Math.exp(logShape));
  const logShape = walkToRoot(slope, {
    start: 0,
    step: slope(0) > 0 ? 0.5 : -0.5,
    furthest: LOG_SHAPE_REACH,
    tolerance: 1e-13,
  });
  if (logShape === null) {
    return refuse('noSpread', 'All failures lie at one end of the record, so there is no growth to read.');
  }
  const shape = Math.exp(logShape);
  const width = 1e-4;
  const information = (slope(logShape - width) - slope(logShape + width)) * (shape / (2 * width));
  const stretch = Math.exp(normalQuantile((1 + level) / 2) / Math.sqrt(information));
  const shapeBounds = { low: shape / stretch, high: shape * stretch };
  const distanceNow = end / (failures * shape);
  return {
    ok: true,
    failures,
    end,
    maximumLikelihood: { shape, rate: failures / end ** shape, intensityNow: 1 / distanceNow, distanceNow },
    shapeBounds,
    growth: {
      direction: shapeBounds.high < 1 ? 'improving' : shapeBounds.low > 1 ? 'worsening' : 'noTrend',
      distanceSoFar: end / failures,
      distanceNow,
      factor: 1 / shape,
    },
  };
}

function requireGroups(groups: readonly FailureGroup[]): void {
  let before = 0;
  for (const { end, failures } of groups) {
    requireNumber('fitPowerLawGrouped', 'failures', failures, 'count');
    requireNumber('fitPowerLawGrouped', 'the end of a group', end, 'positive');
    if (end <= before) {
      throw new RangeError(`fitPowerLawGrouped: a group must end after ${before}, not at ${end}.`);
    }
    before = end;
  }
}

/** Derivative of the log-likelihood by the shape, with the rate at its best; distances as shares of the whole. */
function slopeOfLikelihood(groups: readonly FailureGroup[], end: number, shape: number): number {
  const powerOf = (share: number) => share ** shape;
  const turnOf = (share: number) => (share === 0 ? 0 : share ** shape * Math.log(share));
  return groups.reduce((sum, group, index) => {
    if (group.failures === 0) return sum;
    const from = (groups[index - 1]?.end ?? 0) / end;
    const to = group.end / end;
    return sum + (group.failures * (turnOf(to) - turnOf(from))) / (powerOf(to) - powerOf(from));
  }, 0);
}
