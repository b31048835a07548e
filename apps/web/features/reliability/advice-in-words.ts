import type { PartOutline } from '@halfshaft/contract';
import { intervalInWords } from '@halfshaft/lifing';
import { ADVISED_SHARE, type LimitAdvice, type OpenBounds } from '@halfshaft/reliability';
import type { LifeCounter } from '@halfshaft/worklog';
import { capitalise } from '@/lib/capitalise';
import { drivenInFigures, drivenInWords, roundDriven } from './amount-driven';
import { shareInWords } from './life-points';

/** The limit the log suggests, in the counter's own unit and rounded to what is known. */
export function suggestedEvery({ counter }: Pick<PartOutline, 'counter'>, { distance }: LimitAdvice): number {
  return roundDriven(counter, distance);
}

/**
 * The card's limit beside what the log suggests.
 *
 * @example
 * adviceInWords(pads, advice) // 'Every 60 stage km now; the log suggests 45 stage km (32 to 58): by then 9 of 10 are still good.'
 */
export function adviceInWords(
  part: Pick<PartOutline, 'counter' | 'every'>,
  { distance, bounds }: LimitAdvice,
): string {
  const { counter, every } = part;
  const now = every === null ? 'no limit' : intervalInWords({ counter, every });
  const suggested = `the log suggests ${drivenInWords(counter, distance)} ${rangeInWords(counter, bounds)}`;
  return capitalise(`${now} now; ${suggested}: by then ${MOST} are still good.`);
}

/**
 * The same of a part whose card sets no limit on its life.
 *
 * @example
 * lastsInWords(hose, advice) // '9 of 10 are still good after 45 stage km (32 to 58).'
 */
export function lastsInWords(
  { counter }: Pick<PartOutline, 'counter'>,
  { distance, bounds }: LimitAdvice,
): string {
  return `${MOST} are still good after ${drivenInWords(counter, distance)} ${rangeInWords(counter, bounds)}.`;
}

/** What `ADVISED_SHARE` leaves, as it is said. */
const MOST = shareInWords(1 - ADVISED_SHARE);

function rangeInWords(counter: LifeCounter, { low, high }: OpenBounds): string {
  if (high === null) return `(${drivenInFigures(counter, low)} or more)`;
  return `(${drivenInFigures(counter, low)} to ${drivenInFigures(counter, high)})`;
}
