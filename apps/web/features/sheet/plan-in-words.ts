import type { VisitProposal } from '@halfshaft/bayplan';
import type { EpochSeconds } from '@halfshaft/itinerary';
import { minutesOfTime, minutesOfWork } from '../visit/time-in-words';

type Plan = Extract<VisitProposal, { kind: 'plan' }>;

/**
 * When the work is done by the plan, against the out-time.
 *
 * @example
 * planInWords({ spareSeconds: 200 }, dueOut, clock) // 'By this plan all is done at 13:26, with 3 min to spare.'
 */
export function planInWords(
  { spareSeconds }: Pick<Plan, 'spareSeconds'>,
  dueOut: EpochSeconds,
  clock: (at: EpochSeconds) => string,
): string {
  const done = `By this plan all is done at ${clock(dueOut - spareSeconds)}`;
  if (spareSeconds < 0) {
    const late = minutesOfWork(-spareSeconds);
    return `${done}, ${late} min after the car must leave. Find more hands, or decide what waits.`;
  }
  const spare = minutesOfTime(spareSeconds);
  return spare === 0 ? `${done}, with no minute to spare.` : `${done}, with ${spare} min to spare.`;
}
