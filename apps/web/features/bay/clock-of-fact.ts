import type { EventReplica } from '@halfshaft/contract';
import { formatClock } from '@halfshaft/itinerary';
import type { FactId, LogEntry } from '@halfshaft/worklog';
import { secondsOf } from '../events/event-seconds';

/**
 * When a fact was written down, as its phone's clock said: without a network it may reach the server much later. Null
 * when the log does not hold it.
 */
export function clockOfFact(
  factId: FactId,
  entries: readonly LogEntry[],
  replica: Pick<EventReplica, 'clockOffsetSeconds' | 'itinerary'>,
): string | null {
  const entry = entries.find(({ body }) => body.kind === 'factRecorded' && body.factId === factId);
  return entry ? formatClock(secondsOf(entry.deviceTime, replica), replica.itinerary.timeZone) : null;
}
