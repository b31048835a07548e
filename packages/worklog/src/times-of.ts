import type { ControlId } from '@halfshaft/itinerary';
import type { ControlTime, EntryId } from './model';

/**
 * What the controls wrote for one car, as far as it was recorded, by the control's printed name.
 *
 * @example
 * timesOf(state.times.values(), entryId).get('TC4A')?.writtenAt // 47_160
 */
export function timesOf(times: Iterable<ControlTime>, entryId: EntryId): Map<ControlId, ControlTime> {
  const own = new Map<ControlId, ControlTime>();
  for (const time of times) if (time.entryId === entryId) own.set(time.controlId, time);
  return own;
}
