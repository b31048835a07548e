import { judgeTrend, type Trend } from '../growth/judge-trend';
import { DEFAULT_LEVEL, type LevelOption, type Refusal } from '../model';
import { refuse } from '../refuse';
import { requireNumber } from '../require-number';
import { normalCumulative } from '../special/normal-cumulative';

/** Of one event: how many were counted, and how many of these had it. */
export interface SharedCount {
  had: number;
  of: number;
}

export type ShareTrend = Trend | Refusal<'tooFewEvents' | 'tooFewCounted'>;

const FEWEST = 5;

/**
 * Does a share rise or fall from event to event? The linear trend in proportions with the events numbered in their order
 * (Cochran 1954, Biometrics 10:417-451; Armitage 1955, Biometrics 11:375-386). Standard normal without a trend, negative
 * when the share falls, which is `improving`. Assumes that those counted do not hang together, so count cars and not
 * their times. An event in which none was counted is passed over, and keeps its number.
 *
 * Refuses `tooFewEvents` (2 with a count) and `tooFewCounted`: the normal curve needs 5 that had it and 5 that had not.
 *
 * @throws RangeError when a count is not whole, or more had it than there are
 * @example
 * shareTrend([{ had: 18, of: 40 }, { had: 6, of: 40 }]) // direction 'improving', statistic -2.93
 */
export function shareTrend(
  events: readonly SharedCount[],
  { level = DEFAULT_LEVEL }: LevelOption = {},
): ShareTrend {
  requireNumber('shareTrend', 'level', level, 'share');
  for (const { had, of } of events) {
    if (!Number.isSafeInteger(had) || !Number.isSafeInteger(of) || had < 0 || had > of)
      throw new RangeError(`shareTrend: ${had} of ${of} is no count.`);
  }
  if (events.filter(({ of }) => of > 0).length < 2)
    return refuse('tooFewEvents', 'A trend needs at least 2 events.');
  const sum = (amountOf: (event: SharedCount, number: number) => number) =>
    events.reduce((total, event, number) => total + amountOf(event, number), 0);
  const had = sum((event) => event.had);
  const of = sum((event) => event.of);
  if (had < FEWEST || of - had < FEWEST)
    return refuse('tooFewCounted', `A trend needs ${FEWEST} on either side.`);
  const share = had / of;
  const drift = sum((event, number) => number * (event.had - event.of * share));
  const spread =
    sum((event, number) => number ** 2 * event.of) - sum((event, number) => number * event.of) ** 2 / of;
  const statistic = drift / Math.sqrt(share * (1 - share) * spread);
  return judgeTrend(
    {
      failures: had,
      statistic,
      pImproving: normalCumulative(statistic),
      pWorsening: normalCumulative(-statistic),
    },
    level,
  );
}
