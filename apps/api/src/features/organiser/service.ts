import { randomUUID } from 'node:crypto';
import type { saveOrganiserEventInput } from '@halfshaft/contract';
import type { OrganiserTx, Store } from '@halfshaft/store';
import type { z } from 'zod';
import { unknown } from '../../errors';
import { readItineraryText } from '../event/service';
import {
  asNewOrganiser,
  createItineraryRow,
  createOrganiserRows,
  findNewestNumber,
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

/** A new event, or a new version of one. Nobody else sees it before it is published. */
export async function saveOwnEvent(
  tx: OrganiserTx,
  input: z.infer<typeof saveOrganiserEventInput>,
  now: number,
) {
  const newest = input.publishedEventId ? await findNewestNumber(tx, input.publishedEventId) : 0;
  if (newest === null) throw unknown();
  const read = readItineraryText(input.itinerary);
  if (!read.ok) return read;
  const publishedEventId = input.publishedEventId ?? randomUUID();
  const { timeZone, startsOn } = input.itinerary;
  await writeEventRow(tx, { publishedEventId, name: input.name, timeZone, startsOn }, now);
  const { itinerary, warnings } = read;
  const version = {
    id: randomUUID(),
    publishedEventId,
    number: newest + 1,
    text: input.itinerary,
    itinerary,
  };
  await createItineraryRow(tx, version, now);
  return { ok: true as const, publishedEventId, warnings };
}

/** From now on every signed-in team can take it over. */
export async function publishOwnEvent(tx: OrganiserTx, publishedEventId: string, now: number): Promise<void> {
  if ((await findNewestNumber(tx, publishedEventId)) === null) throw unknown();
  await publishRow(tx, publishedEventId, now);
}
