/** A trend as the statistics tell it, whatever was counted. */
export type ToldTrend =
  | { ok: true; direction: 'improving' | 'worsening' | 'noTrend' }
  | { ok: false; reason: string };

/**
 * Whether something changes from event to event.
 *
 * @param lately what is so now, said behind the direction: ": 2.1 lately"
 * @example
 * trendInWords({ ok: false, reason: 'tooFewFailures' }) // 'too few to tell'
 */
export function trendInWords(trend: ToldTrend, lately = ''): string {
  if (!trend.ok) return trend.reason === 'tooFewEvents' ? 'needs a second event' : 'too few to tell';
  if (trend.direction === 'noTrend') return 'no change beyond chance';
  return `${trend.direction === 'improving' ? 'falling' : 'rising'}${lately}; unlikely to be chance`;
}
