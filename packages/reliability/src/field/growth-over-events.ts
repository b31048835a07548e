import { fitPowerLawGrouped } from '../growth/fit-power-law-grouped';
import type { TrendDirection } from '../growth/judge-trend';
import { laplaceTrend } from '../growth/laplace-trend';
import type { LevelOption, Refusal } from '../model';
import { refuse } from '../refuse';

/** Of one event, all its cars together. */
export interface EventCount {
  distance: number;
  failures: number;
}

export interface GrowthOverEvents {
  ok: true;
  /** `noTrend` means "not shown", not "shown to be steady". */
  direction: TrendDirection;
  failures: number;
  /** For every unit of distance over all events. */
  rateSoFar: number;
  /** The same at the end of the last event, by the power law; null where all failures lie in the first or last event. */
  rateNow: number | null;
}

/**
 * Do failures become rarer from event to event?
 *
 * Events are put one behind the other by the distance that all their cars drove. The direction is Laplace's (Cox & Lewis
 * 1966, section 3.3), with every failure in the middle of its event: nobody can say which of two cars of the same event
 * came first in the history of them all. So placed the failures spread less than chance would spread them, which makes
 * a false alarm rarer than the level allows, never more frequent. How much comes from the power law of counts
 * (`fitPowerLawGrouped`). An event in which nothing was driven joins the one before.
 *
 * Refuses `tooFewEvents` (2 with distance) and `tooFewFailures` (3).
 *
 * @param events in the order they were held
 * @throws RangeError when a distance is negative or a count is not whole
 * @example
 * growthOverEvents([{ distance: 100, failures: 6 }, { distance: 100, failures: 0 }]) // direction 'improving'
 */
export function growthOverEvents(
  events: readonly EventCount[],
  options: LevelOption = {},
): GrowthOverEvents | Refusal<'tooFewEvents' | 'tooFewFailures'> {
  const groups = groupsOf(events);
  const end = groups.at(-1)?.end;
  if (end === undefined || groups.length < 2)
    return refuse('tooFewEvents', 'A trend needs at least 2 events.');
  const middles = groups.flatMap(({ end: to, failures }, index) =>
    new Array<number>(failures).fill(((groups[index - 1]?.end ?? 0) + to) / 2),
  );
  const trend = laplaceTrend({ stoppedAt: 'distance', events: middles, end }, options);
  if (!trend.ok) return trend;
  const law = fitPowerLawGrouped(groups, options);
  return {
    ok: true,
    direction: trend.direction,
    failures: trend.failures,
    rateSoFar: trend.failures / end,
    rateNow: law.ok ? law.maximumLikelihood.intensityNow : null,
  };
}

function groupsOf(events: readonly EventCount[]): { end: number; failures: number }[] {
  const groups: { end: number; failures: number }[] = [];
  let waiting = 0;
  for (const { distance, failures } of events) {
    const last = groups.at(-1);
    if (distance > 0) groups.push({ end: (last?.end ?? 0) + distance, failures: failures + waiting });
    else if (last) last.failures += failures;
    waiting = distance > 0 || last ? 0 : waiting + failures;
  }
  return groups;
}
