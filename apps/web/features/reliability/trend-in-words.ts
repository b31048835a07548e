import type { PartOutline } from '@halfshaft/contract';
import { laplaceTrend } from '@halfshaft/reliability';

/** A lean that comes up by chance more often than not is no lean (common practice, no source). */
const LEAN = 0.5;

/**
 * Whether a thing fails more often than it did. No number: what may be chance is called so.
 *
 * @example
 * trendInWords(part) // 'More often lately; may be chance.'
 */
export function trendInWords({ failures, watched }: Pick<PartOutline, 'failures' | 'watched'>): string {
  const events = failures.map(({ at }) => at).filter((at) => at > 0);
  if (watched <= 0) return TOO_FEW;
  const trend = laplaceTrend({ stoppedAt: 'distance', events, end: watched });
  if (!trend.ok) return TOO_FEW;
  if (trend.direction === 'worsening') return 'More often lately.';
  if (trend.direction === 'improving') return 'Less often lately.';
  if (trend.pEither > LEAN) return 'About as often as before.';
  const way = trend.pWorsening < trend.pImproving ? 'More' : 'Less';
  return `${way} often lately; may be chance.`;
}

const TOO_FEW = 'Too few to say whether it gets better or worse.';
