import { DEFAULT_LEVEL, type Refusal } from '../model';

export type TrendDirection = 'improving' | 'worsening' | 'noTrend';

export interface Trend {
  ok: true;
  /** `noTrend` means "not shown", not "shown to be steady". */
  direction: TrendDirection;
  failures: number;
  /** Its sign or size means something different in each test: read `direction` and the chances instead. */
  statistic: number;
  /** Chance of at least as much improvement as was seen, if there were no trend. Small means it is improving. */
  pImproving: number;
  /** Chance of at least as much worsening as was seen, if there were no trend. Small means it is worsening. */
  pWorsening: number;
  /** Chance of at least as much of either; this one decides the direction. */
  pEither: number;
}

export type TrendRefusal = Refusal<'tooFewFailures'>;

/** The one place where chances become a direction, so that no test can get its sign wrong on its own. */
export function judgeTrend(
  seen: { failures: number; statistic: number; pImproving: number; pWorsening: number },
  level = DEFAULT_LEVEL,
): Trend {
  const { pImproving, pWorsening } = seen;
  const pEither = Math.min(1, 2 * Math.min(pImproving, pWorsening));
  const shown = pEither <= 1 - level;
  const direction = !shown ? 'noTrend' : pImproving < pWorsening ? 'improving' : 'worsening';
  return { ok: true, direction, ...seen, pEither };
}
