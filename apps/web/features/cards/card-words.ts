import { intervalInWords, type JobCard } from '@halfshaft/lifing';
import { SECONDS_IN_MINUTE, writeAmount } from './units';

/**
 * When a card falls due: "every 60 stage km or every 2 days", "by 2027-03-31", "no limit: on request only". The first limit
 * passed decides.
 */
export function dueInWords({
  intervals,
  dateLimit,
  readings,
}: Pick<JobCard, 'intervals' | 'dateLimit' | 'readings'>): string {
  const limits = intervals.map(intervalInWords);
  if (dateLimit) limits.push(`by ${new Date(dateLimit.dueAt * 1000).toISOString().slice(0, 10)}`);
  if (limits.length > 0) return limits.join(' or ');
  const isRead = readings.some(({ low, high, kind }) => kind !== 'hint' && (low !== null || high !== null));
  return isRead ? 'no limit: on request or by reading' : 'no limit: on request only';
}

/** "4 min × 2 people". */
export function workInWords({ seconds, people }: Pick<JobCard, 'seconds' | 'people'>): string {
  return `${writeAmount(seconds, SECONDS_IN_MINUTE, 1)} min × ${people === 1 ? '1 person' : `${people} people`}`;
}
