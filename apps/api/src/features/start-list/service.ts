import { randomUUID } from 'node:crypto';
import type { saveStartListInput } from '@halfshaft/contract';
import {
  newestStartLists,
  placesOfCar,
  positionIn,
  positionsOf,
  readStartList,
  type SavedStartList,
} from '@halfshaft/itinerary';
import type { MemberTx, OrganiserTx } from '@halfshaft/store';
import type { z } from 'zod';
import { AppError, notAllowed, unknown } from '../../errors';
import { findTakenOver, listOwnVersions } from '../bulletin/data';
import { type EntryWithCar, findEntry, findEvent, listEntries } from '../event/data';
import { updateEntry } from '../event/service';
import { findNewest } from '../organiser/data';
import { mayManage, maySeeEvent } from '../people/ability';
import { createStartListRow, findNewestListNumber, listStartListRows } from './data';

/** What holds for each section of the event, and which sections there are. */
export async function listStartLists(tx: OrganiserTx, publishedEventId: string) {
  const newest = (await listOwnVersions(tx, publishedEventId)).at(-1);
  if (!newest) throw unknown();
  const sections = new Set(newest.itinerary.points.map(({ section }) => section));
  const rows = await listStartListRows(tx, tx.organiserId, publishedEventId);
  const lists = newestStartLists(rows).map(({ section, source, starters, savedAt }) => ({
    section,
    source,
    cars: starters.length,
    savedAt,
  }));
  return { sections: [...sections].sort((one, other) => one - other), lists };
}

/** The list of a section from now on; those before it are kept. A list with problems is not saved. */
export async function saveStartList(
  tx: OrganiserTx,
  { publishedEventId, section, source }: z.infer<typeof saveStartListInput>,
  now: number,
) {
  if (!(await findNewest(tx, publishedEventId))) throw unknown();
  const { starters, problems } = readStartList(source, section);
  if (problems.length > 0) return { ok: false as const, problems };
  const number = (await findNewestListNumber(tx, publishedEventId)) + 1;
  const list = { id: randomUUID(), publishedEventId, number, section, source, starters };
  await createStartListRow(tx, list, now);
  return { ok: true as const, cars: starters.length };
}

/** Which of the team's cars start elsewhere by the organiser's lists than the team has set. */
export async function getOpenPlaces(tx: MemberTx, eventId: string) {
  const event = maySeeEvent(tx.member, eventId) ? await findEvent(tx, eventId) : null;
  if (!event) throw unknown();
  const lists = await findLists(tx, eventId);
  if (lists.length === 0) return [];
  return (await listEntries(tx, eventId)).flatMap((entry) => {
    const places = placesElsewhere(lists, entry);
    return places.length === 0 ? [] : [{ entryId: entry.entryId, carNumber: entry.carNumber, places }];
  });
}

/** The places of the lists become those of the car; sections that no list names keep what the team set. */
export async function takePlaces(tx: MemberTx, entryId: string): Promise<void> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const entry = await findEntry(tx, entryId);
  if (!entry) throw unknown();
  const places = placesOfCar(await findLists(tx, entry.eventId), entry.carNumber);
  if (places.size === 0) {
    throw new AppError('conflict', `No start list names car ${entry.carNumber} any more.`);
  }
  const { carNumber, people, positionsBySection } = entry;
  const later = [...places].filter(([section]) => section > 1);
  await updateEntry(tx, {
    teamId: tx.teamId,
    entryId,
    carNumber,
    people,
    startPosition: places.get(1) ?? entry.startPosition,
    positionsBySection: { ...positionsBySection, ...Object.fromEntries(later) },
  });
}

async function findLists(tx: MemberTx, eventId: string): Promise<SavedStartList[]> {
  const taken = await findTakenOver(tx, eventId);
  return taken ? listStartListRows(tx, taken.organiserId, taken.publishedEventId) : [];
}

function placesElsewhere(lists: readonly SavedStartList[], entry: EntryWithCar) {
  const own = positionsOf(entry);
  return [...placesOfCar(lists, entry.carNumber)]
    .map(([section, position]) => ({ section, position }))
    .filter(({ section, position }) => positionIn(own, section) !== position)
    .sort((one, other) => one.section - other.section);
}
