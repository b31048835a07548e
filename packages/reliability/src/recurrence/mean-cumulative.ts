import { type Bounds, DEFAULT_LEVEL, type LevelOption, type Refusal } from '../model';
import { refuse } from '../refuse';
import { requireNumber } from '../require-number';
import { normalQuantile } from '../special/normal-quantile';

/** What one unit (a car, a gearbox that is repaired and goes back) has been through since it was new. */
export interface UnitHistory {
  /** Where it happened, in any order; two at the same distance are two events. */
  events: readonly number[];
  /** How far the unit has been watched. */
  end: number;
}

export interface MeanCumulativeStep {
  distance: number;
  /** Units watched at least this far; one whose history ends here is still among them. */
  atRisk: number;
  events: number;
  /** Mean number of events of one unit up to here. */
  mean: number;
  /** Robust: true whatever makes one unit differ from another. `null` for a single unit, which cannot show that. */
  standardError: number | null;
  /** True only if events of all units come by the same chance, independently. */
  poissonError: number;
  /** From the robust error, on the logarithm of the mean. */
  bounds: Bounds | null;
}

export interface MeanCumulative {
  ok: true;
  units: number;
  events: number;
  steps: MeanCumulativeStep[];
}

/**
 * The mean number of failures of one unit after each distance, for things that are repaired and fail again.
 *
 * A straight line means a steady rate, one that bends up means worsening, down improving. Assumes that where a unit's
 * history ends has nothing to do with how it was doing. Needs no assumption about how events follow each other.
 *
 * Nelson 1988, Journal of Quality Technology 20:24-35; the robust variance is that of Lawless & Nadeau 1995,
 * Technometrics 37:158-168: the squared sum, over each unit, of how far its events ran ahead of the mean.
 *
 * @throws RangeError when a distance is negative, an event lies beyond the end of its unit, or the level is no share
 * @example
 * meanCumulative([{ events: [10, 10], end: 50 }, { events: [], end: 50 }])
 * // one step: distance 10, atRisk 2, events 2, mean 1, standardError 0.7071067811865476
 */
export function meanCumulative(
  units: readonly UnitHistory[],
  { level = DEFAULT_LEVEL }: LevelOption = {},
): MeanCumulative | Refusal<'noUnits' | 'noEvents'> {
  requireNumber('meanCumulative', 'level', level, 'share');
  for (const unit of units) requireHistory(unit);
  if (units.length === 0) return refuse('noUnits', 'There is no history to look at yet.');
  const distances = units.flatMap(({ events }) => events);
  if (distances.length === 0) {
    return refuse(
      'noEvents',
      `Nothing happened to any of the ${units.length}, so there is no curve to draw yet.`,
    );
  }
  const z = normalQuantile((1 + level) / 2);
  const ahead = units.map(() => 0);
  let [mean, poissonVariance] = [0, 0];
  const steps = [...new Set(distances)]
    .sort((a, b) => a - b)
    .map((distance): MeanCumulativeStep => {
      const here = units.map(({ events }) => events.filter((event) => event === distance).length);
      const atRisk = units.filter(({ end }) => end >= distance).length;
      const events = here.reduce((sum, count) => sum + count, 0);
      for (const [index, { end }] of units.entries()) {
        if (end >= distance)
          ahead[index] = (ahead[index] ?? 0) + ((here[index] ?? 0) - events / atRisk) / atRisk;
      }
      mean += events / atRisk;
      poissonVariance += events / atRisk ** 2;
      const standardError = units.length > 1 ? Math.hypot(...ahead) : null;
      const stretch = standardError === null ? null : Math.exp((z * standardError) / mean);
      return {
        distance,
        atRisk,
        events,
        mean,
        standardError,
        poissonError: Math.sqrt(poissonVariance),
        bounds: stretch === null ? null : { low: mean / stretch, high: mean * stretch },
      };
    });
  return { ok: true, units: units.length, events: distances.length, steps };
}

function requireHistory({ events, end }: UnitHistory): void {
  requireNumber('meanCumulative', 'the end of a history', end, 'notNegative');
  for (const event of events) {
    requireNumber('meanCumulative', 'an event', event, 'notNegative');
    if (event > end) {
      throw new RangeError(`meanCumulative: an event at ${event} lies beyond the end of its unit at ${end}.`);
    }
  }
}
