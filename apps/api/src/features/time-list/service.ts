import type { saveTimesInput } from '@halfshaft/contract';
import {
  type CarRecord,
  type ControlPass,
  controlArrivals,
  readTimeList,
  recordsOfClass,
  serviceLeaves,
} from '@halfshaft/itinerary';
import { latenessByControl, latenessByService, shareTrend } from '@halfshaft/reliability';
import type { OrganiserTx } from '@halfshaft/store';
import type { z } from 'zod';
import { findOwnMembership, listHeldEvents } from '../retirement/data';
import { refuseUnseen, requireHeld } from '../retirement/service';
import { findTimeLists, writeTimeList } from './data';

/** The list of one event as it was pasted. What it tells is worked out by whoever shows it. */
export async function getTimes(tx: OrganiserTx, userId: string, publishedEventId: string) {
  const { name, startsOn, itinerary } = await requireHeld(tx, publishedEventId);
  const list = (await findTimeLists(tx, publishedEventId)).get(publishedEventId);
  const head = { name, startsOn, timeZone: itinerary.timeZone, itinerary };
  if (!list) return { ...head, saved: null };
  const { savedBy, ...saved } = list;
  return { ...head, saved: { ...saved, savedByYou: savedBy === (await findOwnMembership(tx, userId)) } };
}

/** The list in place of the one before. With problems nothing is saved. */
export async function saveTimes(
  tx: OrganiserTx,
  userId: string,
  { publishedEventId, source, maxLateMinutes, replaces }: z.infer<typeof saveTimesInput>,
  now: number,
) {
  const { itinerary } = await requireHeld(tx, publishedEventId);
  const { passes, problems } = readTimeList(source, itinerary);
  if (problems.length > 0) return { ok: false as const, problems };
  const list = (await findTimeLists(tx, publishedEventId)).get(publishedEventId);
  const times = passes.length;
  // The same list again is the same save, whoever sends it.
  if (list?.source === source && list.maxLateMinutes === maxLateMinutes)
    return { ok: true as const, times, savedAt: list.savedAt };
  refuseUnseen(list ?? null, replaces);
  const savedBy = await findOwnMembership(tx, userId);
  await writeTimeList(tx, publishedEventId, { source, passes, maxLateMinutes, savedBy, savedAt: now });
  return { ok: true as const, times, savedAt: now };
}

/**
 * How late cars left their services and came to the other controls, event by event, and whether that changes; of one class
 * only where it is named.
 */
export async function latenessOverEvents(tx: OrganiserTx, className: string | null) {
  const lists = await findTimeLists(tx);
  const events = (await listHeldEvents(tx)).flatMap(
    ({ publishedEventId, name, startsOn, itinerary, list: field }) => {
      const list = lists.get(publishedEventId);
      if (!list) return [];
      const { passes, maxLateMinutes } = list;
      const counted = className === null ? passes : passesOfClass(passes, field?.records ?? [], className);
      const lateness = latenessByService(serviceLeaves(counted, itinerary), maxLateMinutes);
      const controls = latenessByControl(controlArrivals(counted, itinerary), maxLateMinutes);
      return [{ publishedEventId, name, startsOn, maxLateMinutes, lateness, controls }];
    },
  );
  return {
    events,
    trend: shareTrend(events.map(({ lateness }) => lateness.cars)),
    controlTrend: shareTrend(events.map(({ controls }) => controls.cars)),
  };
}

/** Times name no class, so it is that of the list of who started and who stopped. */
function passesOfClass(passes: readonly ControlPass[], records: readonly CarRecord[], className: string) {
  const cars = new Set(recordsOfClass(records, className).map(({ carNumber }) => carNumber));
  return passes.filter(({ carNumber }) => cars.has(carNumber));
}
