import type { Drive, JobCard, Surface } from './job-card';
import { starterJobs } from './starter-jobs';
import { starterRounds } from './starter-rounds';

/**
 * A set of cards to begin with: five rounds that carry the looks of every service, and the jobs most cars share.
 * What is due at an ordinary service in the middle of an event fits two people in twenty minutes. Ids are stable (`starter:wheel-nuts`); every call
 * returns fresh objects. Times, intervals and limits are common practice, no source: the car builder's values come
 * first, and the event's regulations above all.
 *
 * @example
 * starterCards('front', 'tarmac').map((card) => card.id)
 */
export function starterCards(drive: Drive, surface: Surface): JobCard[] {
  return [...starterRounds(drive, surface), ...starterJobs(surface)];
}
