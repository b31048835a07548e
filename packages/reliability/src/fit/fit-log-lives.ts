import { refuse } from '../refuse';
import { requireNumber } from '../require-number';
import { normalQuantile } from '../special/normal-quantile';
import { climb, type Free, type Summit } from './climb';
import type { Estimate, FitRefusal, FittedLife } from './fitted-life';
import { ratioBounds } from './ratio-bounds';
import type { LogLife } from './read-observations';
import type { StandardCurve } from './standard-curve';

interface Question {
  functionName: string;
  curve: StandardCurve;
  /** Given when the distribution fixes it. */
  fixedLogSpread?: number;
  level: number;
  fewestFailures: number;
}

/** A fit before its distribution has given the numbers their names. */
export interface LogFit extends Omit<FittedLife, 'mean' | 'standardDeviation'> {
  /** Bounds of the location and of the log spread, turned back from the logarithm. */
  expLocation: Estimate;
  expLogSpread: Estimate;
}

/**
 * Fits a log-location-scale distribution by maximum likelihood; the three exported fits differ only in the curve they
 * pass in and in the names they give to what comes out.
 */
export function fitLogLives(lives: readonly LogLife[], question: Question): LogFit | FitRefusal {
  const { functionName, curve, fixedLogSpread, level, fewestFailures } = question;
  requireNumber(functionName, 'level', level, 'share');
  const refusal = refuseToFit(lives, fewestFailures, fixedLogSpread !== undefined);
  if (refusal) return refusal;

  const free: Free = fixedLogSpread === undefined ? 'both' : 'location';
  const start = guessStart(lives);
  const summit = climb(lives, curve, { ...start, logSpread: fixedLogSpread ?? start.logSpread }, free);
  const variance = readVariance(summit, free);
  if (!summit.settled || variance === null) {
    return refuse(
      'notSettled',
      'These lives fit one curve as well as another, so no curve is drawn through them.',
    );
  }
  const estimate = (held: 'location' | 'logSpread') =>
    estimateExp(lives, curve, summit, { held, level, variance: variance[held], free });
  return {
    ok: true,
    lives: lives.length,
    failures: countFailures(lives),
    location: summit.location,
    spread: Math.exp(summit.logSpread),
    variance,
    logLikelihood: summit.point.value,
    akaike: 2 * (free === 'both' ? 2 : 1) - 2 * summit.point.value,
    expLocation: estimate('location'),
    expLogSpread: estimate('logSpread'),
  };
}

/** Estimate and bounds of what one of the two is the logarithm of. */
function estimateExp(
  lives: readonly LogLife[],
  curve: StandardCurve,
  summit: Summit,
  asked: { held: 'location' | 'logSpread'; level: number; variance: number; free: Free },
): Estimate {
  const { held, level, free } = asked;
  const standardError = Math.sqrt(asked.variance);
  const value = Math.exp(summit[held]);
  const stretch = Math.exp(normalQuantile((1 + level) / 2) * standardError);
  const wald = { low: value / stretch, high: value * stretch };
  if (standardError === 0) return { value, wald, likelihoodRatio: wald };
  const options = { held, level, standardError, otherMoves: free === 'both' };
  const { low, high } = ratioBounds(lives, curve, summit, options);
  return {
    value,
    wald,
    likelihoodRatio: { low: low === null ? 0 : Math.exp(low), high: high === null ? null : Math.exp(high) },
  };
}

function countFailures(lives: readonly LogLife[]): number {
  return lives.filter(({ to }) => to < Infinity).length;
}

function refuseToFit(
  lives: readonly LogLife[],
  fewestFailures: number,
  spreadIsFixed: boolean,
): FitRefusal | undefined {
  const failures = countFailures(lives);
  if (failures < fewestFailures) {
    const seen = failures === 1 ? '1 failure is' : `${failures} failures are`;
    return refuse('tooFewFailures', `Only ${seen} known; a fit needs at least ${fewestFailures}.`);
  }
  // One single distance that agrees with every life: the narrower the curve around it, the likelier, without end.
  const latestStart = Math.max(...lives.map(({ from }) => from));
  const earliestEnd = Math.min(...lives.map(({ to }) => to));
  if (spreadIsFixed ? latestStart === -Infinity : latestStart <= earliestEnd) {
    return refuse(
      'noSpread',
      'All these lives could have ended at one and the same distance; their spread is unknown.',
    );
  }
  return undefined;
}

function guessStart(lives: readonly LogLife[]): { location: number; logSpread: number } {
  const places = lives
    .map(({ from, to }) => (to === Infinity ? from : from === -Infinity ? to : (from + to) / 2))
    .filter(Number.isFinite);
  const location = places.reduce((sum, place) => sum + place, 0) / places.length;
  const variance = places.reduce((sum, place) => sum + (place - location) ** 2, 0) / places.length;
  return { location, logSpread: variance > 0 ? Math.log(variance) / 2 : 0 };
}

/** A spread known only to within e^±20 is not known: the likelihood has become flat there instead of reaching a top. */
const LARGEST_VARIANCE = 100;

/** The inverse of the observed information, or `null` where the top is not round. */
function readVariance({ point }: Summit, free: Free): FittedLife['variance'] | null {
  const along = -point.byLocationTwice;
  const up = -point.byLogSpreadTwice;
  if (free === 'location') return along > 0 ? { location: 1 / along, logSpread: 0, both: 0 } : null;
  const determinant = along * up - point.byBoth ** 2;
  if (!(along > 0 && determinant > 0 && along / determinant < LARGEST_VARIANCE)) return null;
  return { location: up / determinant, logSpread: along / determinant, both: point.byBoth / determinant };
}
