import { type Bounds, DEFAULT_LEVEL, type LevelOption, type Life, type Refusal } from '../model';
import { refuse } from '../refuse';
import { requireNumber } from '../require-number';
import { normalQuantile } from '../special/normal-quantile';
import { listSurvivors } from './list-survivors';

export interface SurvivalOptions extends LevelOption {
  /**
   * The scale the bounds are drawn on. `logLog` never leaves 0 to 1 and behaves best with few lives; `log` and `plain`
   * are cut off at 0 and 1.
   */
  scale?: 'plain' | 'log' | 'logLog';
}

export interface SurvivalStep {
  distance: number;
  atRisk: number;
  failures: number;
  /** Share still good just after this distance. */
  surviving: number;
  /** Greenwood's; `null` from where nobody is left, since then nothing is left to estimate it from. */
  standardError: number | null;
  bounds: Bounds | null;
  /** Nelson and Aalen's: the failures a part that is always replaced would have had by here. */
  cumulativeHazard: number;
  cumulativeHazardError: number;
}

export interface SurvivalCurve {
  ok: true;
  lives: number;
  failures: number;
  /** The longest life: beyond it the curve says nothing. */
  furthest: number;
  /** One step for each distance at which something failed; before the first, all survive. */
  steps: SurvivalStep[];
}

/**
 * The share of parts still good after each distance, from lives of which some have not ended in a failure yet.
 *
 * For whoever asks "how many of these last 300 km?" without believing in any formula of wear. Assumes that lives are
 * independent and that a part taken off early was no more and no less likely to fail than the others.
 *
 * Product limit: Kaplan & Meier 1958, Journal of the American Statistical Association 53:457-481; standard error:
 * Greenwood 1926; the log-log scale: Kalbfleisch & Prentice 2002, section 1.4; cumulative hazard: Nelson 1972, Aalen 1978.
 *
 * @throws RangeError when a distance is negative or the level is not between 0 and 1
 * @example
 * kaplanMeier([{ distance: 10, failed: true }, { distance: 20, failed: false }])
 * // one step: distance 10, atRisk 2, failures 1, surviving 0.5, standardError 0.3535533905932738
 */
export function kaplanMeier(
  lives: readonly Life[],
  { level = DEFAULT_LEVEL, scale = 'logLog' }: SurvivalOptions = {},
): SurvivalCurve | Refusal<'noLives' | 'noFailures'> {
  requireNumber('kaplanMeier', 'level', level, 'share');
  const survivors = listSurvivors('kaplanMeier', lives);
  const furthest = survivors.at(-1)?.distance;
  if (furthest === undefined) return refuse('noLives', 'There is no life to look at yet.');
  const failures = lives.filter(({ failed }) => failed).length;
  if (failures === 0) {
    return refuse('noFailures', `None of the ${lives.length} failed, so there is no curve to draw yet.`);
  }

  const z = normalQuantile((1 + level) / 2);
  const steps: SurvivalStep[] = [];
  let [surviving, relativeVariance, cumulativeHazard, hazardVariance] = [1, 0, 0, 0];
  for (const { distance, atRisk, here } of survivors) {
    const failed = here.filter((life) => life.failed).length;
    if (failed === 0) continue;
    surviving *= (atRisk - failed) / atRisk;
    relativeVariance += failed / (atRisk * (atRisk - failed));
    cumulativeHazard += failed / atRisk;
    hazardVariance += failed / atRisk ** 2;
    const relativeError = atRisk > failed ? Math.sqrt(relativeVariance) : null;
    steps.push({
      distance,
      atRisk,
      failures: failed,
      surviving,
      standardError: relativeError === null ? null : surviving * relativeError,
      bounds: relativeError === null ? null : boundsOn(scale, surviving, z * relativeError),
      cumulativeHazard,
      cumulativeHazardError: Math.sqrt(hazardVariance),
    });
  }
  return { ok: true, lives: lives.length, failures, furthest, steps };
}

/** `reach` is z times the standard error of the logarithm of the surviving share. */
function boundsOn(scale: 'plain' | 'log' | 'logLog', surviving: number, reach: number): Bounds {
  switch (scale) {
    case 'plain':
      return { low: Math.max(0, surviving * (1 - reach)), high: Math.min(1, surviving * (1 + reach)) };
    case 'log':
      return { low: surviving * Math.exp(-reach), high: Math.min(1, surviving * Math.exp(reach)) };
    case 'logLog': {
      const power = Math.exp(reach / Math.abs(Math.log(surviving)));
      return { low: surviving ** power, high: surviving ** (1 / power) };
    }
  }
}
