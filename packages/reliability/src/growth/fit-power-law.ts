import { type Bounds, DEFAULT_LEVEL, type LevelOption, type OpenBounds, type Refusal } from '../model';
import { refuse } from '../refuse';
import { requireNumber } from '../require-number';
import { chiSquareQuantile } from '../special/chi-square-quantile';
import { normalQuantile } from '../special/normal-quantile';
import { boundDistanceNow } from './bound-distance-now';
import type { TrendDirection } from './judge-trend';
import { type EventHistory, type ReadHistory, readHistory } from './read-history';
import { refuseFewFailures } from './refuse-few-failures';

/** One reading of the law: expected failures by distance t are rate × t^shape. */
export interface PowerLaw {
  /** Below 1 failures come further and further apart, above 1 closer and closer. */
  shape: number;
  rate: number;
  /** Failures for each unit of distance, at the end of the record. */
  intensityNow: number;
  /** Its inverse: the mean distance between failures if nothing is changed from here on. */
  distanceNow: number;
}

export interface PowerLawFit {
  ok: true;
  failures: number;
  end: number;
  maximumLikelihood: PowerLaw;
  /** With the shape corrected for its bias: the one to quote, which differs much with few failures. */
  corrected: PowerLaw;
  /** Exact bounds of the shape. */
  shapeBounds: Bounds;
  /** Bounds of the true distance between failures at the end of the record. */
  distanceNowBounds: {
    /** Crow's: exact when the record stopped at a failure, else hit at least as often as the level says. */
    exact: OpenBounds;
    /** NIST's approximate formula; only for a record that stopped at a distance. */
    approximate: OpenBounds | null;
  };
  /** How far the failures lie off the fitted law: 0 is perfect; to be compared with the tables of MIL-HDBK-189. */
  cramerVonMises: number;
  /** Numbers for a sentence: "one failure every 150 km so far, every 310 km now". */
  growth: {
    direction: TrendDirection;
    distanceSoFar: number;
    distanceNow: number;
    /** How many times as far it goes between failures now as it did on average. */
    factor: number;
  };
}

const FEWEST_FAILURES = 3;
const NO_SPREAD = 'All failures lie at the very end, so there is no growth to read.';

/**
 * The power law of reliability growth: are the repairs and changes making failures rarer, and how far does it run between
 * failures now? For one thing that is repaired (a car's gearbox, a season of one car), or a whole fleet counted in total
 * distance.
 *
 * Assumes that failures come by chance at a rate that changes as a power of distance; `cramerVonMises` and
 * `meanCumulative` show whether it does. Direction: what the exact bounds of the shape leave no doubt about.
 *
 * Crow 1974; MIL-HDBK-189 (1981) appendix C; bias correction and approximate bounds NIST/SEMATECH e-Handbook 8.4.5.2;
 * exact bounds Crow 1982, Technometrics 24:67-72 (see `boundDistanceNow`).
 *
 * Refuses fewer than 3 failures, and `noSpread` when all lie at the very end, or so near that the
 * rate is too small or too large a number to write down.
 *
 * @throws RangeError when an event is not above 0 or beyond the end, or the level is not between 0 and 1
 * @example
 * fitPowerLaw({ stoppedAt: 'distance', events: [5, 40, 43, 175, 389, 712, 747, 795, 1299, 1478], end: 1500 })
 * // corrected.shape 0.4835, growth { direction 'improving', distanceSoFar 150, distanceNow 310.2, factor 2.07 }
 */
export function fitPowerLaw(
  history: EventHistory,
  { level = DEFAULT_LEVEL }: LevelOption = {},
): PowerLawFit | Refusal<'tooFewFailures' | 'noSpread'> {
  requireNumber('fitPowerLaw', 'level', level, 'share');
  const read = readHistory('fitPowerLaw', history);
  const { end, failures, counted } = read;
  const refusal = refuseFewFailures(failures, FEWEST_FAILURES, 'growth');
  if (refusal) return refusal;
  const logSum = counted.reduce((sum, event) => sum + Math.log(end / event), 0);
  if (logSum === 0) return refuse('noSpread', NO_SPREAD);
  const maximumLikelihood = readLaw(failures / logSum, failures, end);
  if (!isWritable(maximumLikelihood.rate)) return refuse('noSpread', NO_SPREAD);

  const freedom = 2 * counted.length;
  const shapeBounds = {
    low: chiSquareQuantile((1 - level) / 2, freedom) / (2 * logSum),
    high: chiSquareQuantile((1 + level) / 2, freedom) / (2 * logSum),
  };
  const corrected = readLaw((counted.length - 1) / logSum, failures, end);
  const distanceSoFar = end / failures;
  return {
    ok: true,
    failures,
    end,
    maximumLikelihood,
    corrected,
    shapeBounds,
    distanceNowBounds: {
      exact: boundDistanceNow({ ...read, logSum, level }),
      approximate: approximateBounds(corrected.distanceNow, read, level),
    },
    cramerVonMises: measureMisfit(read, logSum),
    growth: {
      direction: shapeBounds.high < 1 ? 'improving' : shapeBounds.low > 1 ? 'worsening' : 'noTrend',
      distanceSoFar,
      distanceNow: corrected.distanceNow,
      factor: corrected.distanceNow / distanceSoFar,
    },
  };
}

function readLaw(shape: number, failures: number, end: number): PowerLaw {
  const distanceNow = end / (failures * shape);
  return { shape, rate: failures / end ** shape, intensityNow: 1 / distanceNow, distanceNow };
}

/** A shape in the hundreds takes the rate out of what a number can hold: nothing could be worked out from it. */
function isWritable(rate: number): boolean {
  return rate > 0 && Number.isFinite(rate);
}

function approximateBounds(
  distanceNow: number,
  { failures, stoppedAt }: ReadHistory,
  level: number,
): OpenBounds | null {
  if (stoppedAt === 'failure') return null;
  const z = normalQuantile((1 + level) / 2);
  const scaled = distanceNow * failures * (failures - 1);
  const lowRoot = failures + z ** 2 / 4 + Math.sqrt((failures * z ** 2) / 2 + z ** 4 / 16);
  const highRoot = failures - z * Math.sqrt(failures / 2);
  return { low: scaled / lowRoot ** 2, high: highRoot > 0 ? scaled / highRoot ** 2 : null };
}

/** Cramér and von Mises' statistic with the unbiased shape, as in MIL-HDBK-189. */
function measureMisfit({ end, counted }: ReadHistory, logSum: number): number {
  const size = counted.length;
  const shape = (size - 1) / logSum;
  return counted.reduce(
    (sum, event, index) => sum + ((event / end) ** shape - (2 * index + 1) / (2 * size)) ** 2,
    1 / (12 * size),
  );
}
