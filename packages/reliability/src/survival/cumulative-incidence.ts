import { type Bounds, DEFAULT_LEVEL, type LevelOption, type Refusal } from '../model';
import { refuse } from '../refuse';
import { requireNumber } from '../require-number';
import { normalQuantile } from '../special/normal-quantile';
import { listSurvivors } from './list-survivors';

/** One life and what ended it; `null` when nothing had ended it by then. */
export interface CausedLife {
  distance: number;
  cause: string | null;
}

export interface IncidenceStep {
  distance: number;
  atRisk: number;
  /** Ended by this cause at this distance. */
  failures: number;
  /** Share ended by this cause so far. */
  incidence: number;
  standardError: number;
  /** `null` while nothing, and once everything, has been ended by this cause. */
  bounds: Bounds | null;
}

export interface CauseIncidence {
  cause: string;
  failures: number;
  /** All causes have their steps at the same distances, so that they can be stacked. */
  steps: IncidenceStep[];
}

export interface CumulativeIncidence {
  ok: true;
  lives: number;
  failures: number;
  furthest: number;
  /** Ended by nothing yet; with the incidences of all causes it makes 1 at every distance. */
  surviving: { distance: number; surviving: number }[];
  /** The most frequent cause first; equal ones by name. */
  causes: CauseIncidence[];
}

/** What the recursion carries along for one cause: shares and their covariance. */
interface Running {
  incidence: number;
  survivalVariance: number;
  covariance: number;
  incidenceVariance: number;
}

/**
 * The share ended by each of several causes after each distance, where the first to come ends the life: mechanical,
 * off the road, out of time. One curve a cause taken alone would answer "if the other causes did not exist", and the
 * curves would sum to more than has really ended; these sum to exactly that.
 *
 * Aalen & Johansen 1978, Scandinavian Journal of Statistics 5:141-150. The variance is the Greenwood-type one of
 * Andersen, Borgan, Gill & Keiding 1993, section IV.4.1, as a recursion: each distance adds the multinomial variance of
 * what happened there to what is carried over. With one cause it is Greenwood's, without censoring it is the binomial
 * one. Bounds are drawn on the log-log scale of the incidence, which never leaves 0 to 1.
 *
 * @throws RangeError when a distance is negative or the level is not between 0 and 1
 * @example
 * cumulativeIncidence([{ distance: 10, cause: 'engine' }, { distance: 20, cause: 'off' }])
 * // surviving 0.5 then 0; causes engine 0.5 then 0.5, off 0 then 0.5
 */
export function cumulativeIncidence(
  lives: readonly CausedLife[],
  { level = DEFAULT_LEVEL }: LevelOption = {},
): CumulativeIncidence | Refusal<'noLives' | 'noFailures'> {
  requireNumber('cumulativeIncidence', 'level', level, 'share');
  const survivors = listSurvivors('cumulativeIncidence', lives);
  const furthest = survivors.at(-1)?.distance;
  if (furthest === undefined) return refuse('noLives', 'There is no life to look at yet.');
  const counts = countCauses(lives);
  if (counts.length === 0) {
    return refuse('noFailures', `None of the ${lives.length} has ended yet, so no cause has a share.`);
  }
  const eventful = survivors.filter(({ here }) => here.some(({ cause }) => cause !== null));
  const z = normalQuantile((1 + level) / 2);
  let share = 1;
  const surviving = eventful.map(({ distance, atRisk, here }) => {
    share *= (atRisk - here.filter(({ cause }) => cause !== null).length) / atRisk;
    return { distance, surviving: share };
  });
  return {
    ok: true,
    lives: lives.length,
    failures: counts.reduce((sum, [, count]) => sum + count, 0),
    furthest,
    surviving,
    causes: counts.map(([cause, failures]) => ({ cause, failures, steps: followCause(eventful, cause, z) })),
  };
}

function countCauses(lives: readonly CausedLife[]): [string, number][] {
  const counts = new Map<string, number>();
  for (const { cause } of lives) if (cause !== null) counts.set(cause, (counts.get(cause) ?? 0) + 1);
  return [...counts].sort(([a, first], [b, second]) => second - first || (a < b ? -1 : 1));
}

function followCause(
  eventful: readonly { distance: number; atRisk: number; here: CausedLife[] }[],
  followed: string,
  z: number,
): IncidenceStep[] {
  let surviving = 1;
  let running: Running = { incidence: 0, survivalVariance: 0, covariance: 0, incidenceVariance: 0 };
  return eventful.map(({ distance, atRisk, here }) => {
    const failures = here.filter(({ cause }) => cause === followed).length;
    const ended = here.filter(({ cause }) => cause !== null).length / atRisk;
    running = stepOn(running, surviving, { ended, byCause: failures / atRisk, atRisk });
    surviving *= 1 - ended;
    const standardError = Math.sqrt(Math.max(0, running.incidenceVariance));
    const { incidence } = running;
    return {
      distance,
      atRisk,
      failures,
      incidence,
      standardError,
      bounds: logLogBounds(incidence, z * standardError),
    };
  });
}

function stepOn(
  before: Running,
  surviving: number,
  { ended, byCause, atRisk }: { ended: number; byCause: number; atRisk: number },
): Running {
  const { survivalVariance, covariance } = before;
  const kept = 1 - ended;
  const fresh = surviving ** 2 / atRisk;
  return {
    incidence: before.incidence + surviving * byCause,
    survivalVariance: kept ** 2 * survivalVariance + fresh * ended * kept,
    covariance: kept * (covariance + byCause * survivalVariance) - fresh * kept * byCause,
    incidenceVariance:
      before.incidenceVariance +
      2 * byCause * covariance +
      byCause ** 2 * survivalVariance +
      fresh * byCause * (1 - byCause),
  };
}

function logLogBounds(share: number, reach: number): Bounds | null {
  if (share <= 0 || share >= 1) return null;
  const power = Math.exp(reach / (share * Math.abs(Math.log(share))));
  return { low: share ** power, high: share ** (1 / power) };
}
