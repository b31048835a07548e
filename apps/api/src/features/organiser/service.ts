import { randomUUID } from 'node:crypto';
import type { saveOrganiserEventInput } from '@halfshaft/contract';
import type { OrganiserTx, Store } from '@halfshaft/store';
import type { z } from 'zod';
import { unknown } from '../../errors';
import { createBulletinRow } from '../bulletin/data';
import { readItineraryText } from '../event/service';
import {
  asNewOrganiser,
  createItineraryRow,
  createOrganiserRows,
  findNewest,
  listOwnEvents,
  publishRow,
  writeEventRow,
} from './data';

export { listOwnEvents };

export function createOrganiser(
  { store, userId, now }: { store: Store; userId: string; now: number },
  name: string,
) {
  const organiserId = randomUUID();
  return asNewOrganiser(store, { organiserId, userId }, async (tx) => {
    await createOrganiserRows(tx, { name, membershipId: randomUUID(), userId }, now);
    return { organiserId };
  });
}

/**
 * A new event, or a new version of one. Nobody else sees it before it is published, and of an event that is published
 * already before the version is issued as a bulletin.
 */
export async function saveOwnEvent(
  tx: OrganiserTx,
  input: z.infer<typeof saveOrganiserEventInput>,
  now: number,
) {
  const known = input.publishedEventId ? await findNewest(tx, input.publishedEventId) : null;
  if (input.publishedEventId && !known) throw unknown();
  const read = readItineraryText(input.itinerary);
  if (!read.ok) return read;
  const publishedEventId = input.publishedEventId ?? randomUUID();
  // The days that teams see stay those of what was issued.
  const { timeZone, startsOn } = known?.publishedDates ?? input.itinerary;
  await writeEventRow(tx, { publishedEventId, name: input.name, timeZone, startsOn }, now);
  const { itinerary, warnings } = read;
  const version = {
    id: randomUUID(),
    publishedEventId,
    number: (known?.number ?? 0) + 1,
    text: input.itinerary,
    itinerary,
  };
  await createItineraryRow(tx, version, now);
  return { ok: true as const, publishedEventId, warnings };
}

/** From now on every signed-in team can take it over. */
export async function publishOwnEvent(tx: OrganiserTx, publishedEventId: string, now: number): Promise<void> {
  const newest = await findNewest(tx, publishedEventId);
  if (!newest) throw unknown();
  if (newest.publishedDates) return;
  const { number: itineraryNumber } = newest;
  const first = { id: randomUUID(), publishedEventId, number: 0, itineraryNumber, note: '' };
  await createBulletinRow(tx, first, now);
  await publishRow(tx, publishedEventId, now);
}
