import type { ControlId, StageId } from '@halfshaft/itinerary';
import type { ControlTime, EntryId } from './model';

/**
 * What the controls wrote for one car, and when it started its stages, as far as it was recorded: by the printed name
 * of the control or stage.
 *
 * @example
 * timesOf(state.times.values(), entryId).get('TC4A')?.writtenAt // 47_160
 */
export function timesOf(
  times: Iterable<ControlTime>,
  entryId: EntryId,
): Map<ControlId | StageId, ControlTime> {
  return byName(times, (time) => time.entryId === entryId && !time.finish);
}

/**
 * When one car finished its stages, as far as it was recorded.
 *
 * @example
 * finishesOf(state.times.values(), entryId).get('SS4')?.writtenAt // 47_820
 */
export function finishesOf(times: Iterable<ControlTime>, entryId: EntryId): Map<StageId, ControlTime> {
  return byName(times, (time) => time.entryId === entryId && time.finish === true);
}

function byName(times: Iterable<ControlTime>, isOne: (time: ControlTime) => boolean) {
  const own = new Map<string, ControlTime>();
  for (const time of times) if (isOne(time)) own.set(time.controlId, time);
  return own;
}
